using System.Text.Json;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Yardage;
using Point = Nestmark.Geometry.Point;

namespace Nestmark.Tests.Output;

public sealed class ReportJsonTests
{
    // Design 5.3: these keys, in this order, come first.
    [Fact]
    public void Keys_stand_in_the_order_of_the_contract()
    {
        JsonElement root = Read(PlanBuilder.Folded());
        Assert.Equal(["nestmark", "title", "seed", "seconds", "problems", "cloths"], KeysOf(root)[..6]);
        JsonElement cloth = root.GetProperty("cloths")[0];
        Assert.Equal(["id", "lay", "usableWidth_mm", "layWidth_mm", "layLength_mm", "efficiency", "buy", "placements", "unplaced"], KeysOf(cloth)[..9]);
        Assert.Equal(["length_mm", "text", "cost"], KeysOf(cloth.GetProperty("buy"))[..3]);
        Assert.Equal(
            ["piece", "size", "copy", "layers", "onFold", "flipped", "turn_deg", "outline_mm", "x_mm", "y_mm"],
            KeysOf(cloth.GetProperty("placements")[0])[..10]);
        Assert.Equal(["piece", "reason"], KeysOf(cloth.GetProperty("unplaced")[0])[..2]);
    }

    [Fact]
    public void The_outline_is_the_cutting_line_as_it_lies()
    {
        Plan plan = PlanBuilder.TwoCloths();
        JsonElement cloths = Read(plan).GetProperty("cloths");
        for (int i = 0; i < plan.Cloths.Length; i++)
        {
            foreach ((Placement placement, JsonElement json) in plan.Cloths[i].Marker.Placements.Zip(cloths[i].GetProperty("placements").EnumerateArray()))
                Assert.Equal(placement.CuttingLine.Outer, json.GetProperty("outline_mm").EnumerateArray().Select(PointOf));
        }
    }

    [Fact]
    public void A_turned_over_copy_says_how_it_lies()
    {
        JsonElement sleeve = Read(PlanBuilder.Open()).GetProperty("cloths")[0].GetProperty("placements")[2];
        Assert.True(sleeve.GetProperty("flipped").GetBoolean());
        Assert.Equal(180m, sleeve.GetProperty("turn_deg").GetDecimal());
        Assert.Equal((530m, 960m), (sleeve.GetProperty("x_mm").GetDecimal(), sleeve.GetProperty("y_mm").GetDecimal()));
        Assert.Equal(2, sleeve.GetProperty("copy").GetInt32());
    }

    // Efficiency from the file's own outlines (design 5.3: sum of layers x area / (usableWidth x layLength)), by the shoelace formula.
    [Fact]
    public void Efficiency_follows_from_the_outlines()
    {
        JsonElement cloth = Read(PlanBuilder.Folded()).GetProperty("cloths")[0];
        double used = cloth.GetProperty("placements").EnumerateArray()
            .Sum(one => one.GetProperty("layers").GetInt32() * AreaOf([.. one.GetProperty("outline_mm").EnumerateArray().Select(PointOf)]));
        double expected = used / (cloth.GetProperty("usableWidth_mm").GetDouble() * cloth.GetProperty("layLength_mm").GetDouble());
        Assert.Equal(expected, cloth.GetProperty("efficiency").GetDouble(), 0.0001);
    }

    [Fact]
    public void Micrometers_are_kept()
    {
        Plan plan = PlanBuilder.Strip(1234.567, 60);
        Assert.Equal(1234.567m, Read(plan).GetProperty("cloths")[0].GetProperty("layLength_mm").GetDecimal());
    }

    [Fact]
    public void Steps_and_seconds_are_told_apart()
    {
        JsonElement bySteps = Read(PlanBuilder.Folded());
        Assert.Equal((0, 200), (bySteps.GetProperty("seconds").GetDouble(), bySteps.GetProperty("steps").GetInt64()));
        JsonElement bySeconds = Read(PlanBuilder.Folded() with { Effort = new Effort(2.5, null, 2, 9) });
        Assert.Equal(2.5, bySeconds.GetProperty("seconds").GetDouble());
        Assert.Equal(JsonValueKind.Null, bySeconds.GetProperty("steps").ValueKind);
    }

    [Fact]
    public void Notes_are_problems_with_their_place()
    {
        JsonElement note = Read(PlanBuilder.Folded()).GetProperty("problems")[0];
        Assert.Equal("note smock.svg 12 5 #front", $"{note.GetProperty("severity")} {note.GetProperty("file")} {note.GetProperty("line")} {note.GetProperty("column")} {note.GetProperty("item")}");
    }

    [Fact]
    public void A_cloth_without_a_price_has_no_cost()
    {
        Plan plan = PlanBuilder.Folded();
        ClothPlan cloth = plan.Cloths[0] with { Purchase = plan.Cloths[0].Purchase with { Cost = null } };
        JsonElement buy = Read(plan with { Cloths = [cloth] }).GetProperty("cloths")[0].GetProperty("buy");
        Assert.Equal(JsonValueKind.Null, buy.GetProperty("cost").ValueKind);
    }

    [Fact]
    public void Any_text_of_the_users_is_kept()
    {
        string title = "A \"quoted\" & <b>bold</b> 罩衫 \u0007 café";
        Assert.Equal(title, Read(PlanBuilder.Folded(title: title)).GetProperty("title").GetString());
    }

    private static JsonElement Read(Plan plan) => JsonDocument.Parse(ReportJson.Write(plan)).RootElement;

    private static string[] KeysOf(JsonElement json) => [.. json.EnumerateObject().Select(property => property.Name)];

    private static Point PointOf(JsonElement pair) => new((long)(pair[0].GetDecimal() * 1000), (long)(pair[1].GetDecimal() * 1000));

    private static double AreaOf(Point[] ring) => ring
        .Select((point, i) => point.XMillimeters * ring[(i + 1) % ring.Length].YMillimeters - ring[(i + 1) % ring.Length].XMillimeters * point.YMillimeters)
        .Sum() / 2;
}
