using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Output;

/// <summary>The plan as JSON for other programs: lengths in millimeters to the micrometer, x along the cloth, y from the fold or the near selvage.</summary>
public static class ReportJson
{
    /// <summary>The file's bytes, UTF-8; the same plan gives the same bytes.</summary>
    /// <remarks>Shape: design 5.3. <c>seconds</c> is what the search was allowed, 0 when it stopped by steps.</remarks>
    public static byte[] Write(Plan plan)
    {
        using MemoryStream file = new();
        using (Utf8JsonWriter json = new(file, JsonFile.Options))
            WritePlan(json, plan);
        file.WriteByte((byte)'\n');
        return file.ToArray();
    }

    private static void WritePlan(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject();
        json.WriteNumber("nestmark", 1);
        JsonFile.WriteText(json, "title", plan.Job.Title);
        json.WriteNumber("seed", plan.Effort.Seed);
        json.WriteNumber("seconds", plan.Effort.Seconds ?? 0);
        json.WriteStartArray("problems");
        foreach (Problem problem in plan.Notes)
            WriteProblem(json, problem);
        json.WriteEndArray();
        json.WriteStartArray("cloths");
        foreach (ClothPlan cloth in plan.Cloths)
            WriteCloth(json, cloth);
        json.WriteEndArray();
        WriteShopping(json, plan);
        WriteAdvice(json, plan);
        ReportSeams.Write(json, plan.Job);
        json.WriteBoolean("complete", plan.IsComplete);
        if (plan.Effort.Steps is long steps)
            json.WriteNumber("steps", steps);
        else
            json.WriteNull("steps");
        json.WriteNumber("threads", plan.Effort.Threads);
        json.WriteString("system", plan.Job.System == MeasureSystem.Metric ? "metric" : "imperial");
        JsonFile.WriteText(json, "source", plan.Job.Source);
        json.WriteString("origin", JobOrigin.Of(plan.Job));
        json.WriteEndObject();
    }

    private static void WriteProblem(Utf8JsonWriter json, Problem problem)
    {
        json.WriteStartObject();
        json.WriteString("severity", problem.Severity == Severity.Error ? "error" : "note");
        JsonFile.WriteText(json, "file", problem.Where.File);
        json.WriteNumber("line", problem.Where.Line);
        json.WriteNumber("column", problem.Where.Column);
        JsonFile.WriteText(json, "item", problem.Where.Item);
        JsonFile.WriteText(json, "what", problem.What);
        JsonFile.WriteText(json, "hint", problem.Hint);
        json.WriteEndObject();
    }

    private static void WriteCloth(Utf8JsonWriter json, ClothPlan cloth)
    {
        Marker marker = cloth.Marker;
        json.WriteStartObject();
        JsonFile.WriteText(json, "id", cloth.Cloth.Name);
        json.WriteString("lay", LayWords.Of(marker.Surface.Form));
        JsonFile.WriteLength(json, "usableWidth_mm", marker.Surface.UsableWidth);
        JsonFile.WriteLength(json, "layWidth_mm", marker.Surface.Depth);
        JsonFile.WriteLength(json, "layLength_mm", marker.LayLength);
        json.WriteNumber("efficiency", Math.Round(marker.EfficiencyRatio, 6));
        WritePurchase(json, cloth.Purchase);
        json.WriteStartArray("placements");
        foreach (Placement placement in marker.Placements)
            WritePlacement(json, placement);
        json.WriteEndArray();
        json.WriteStartArray("unplaced");
        foreach (Unplaced unplaced in marker.Unplaced)
            JsonFile.WriteUnplaced(json, unplaced);
        json.WriteEndArray();
        JsonFile.WriteLength(json, "width_mm", cloth.Cloth.Width);
        JsonFile.WriteLength(json, "selvage_mm", cloth.Cloth.Selvage);
        JsonFile.WriteLength(json, "ends_mm", cloth.Cloth.Ends);
        JsonFile.WriteLength(json, "gap_mm", cloth.Cloth.Gap);
        json.WriteString("nap", JsonFile.NapKey(cloth.Cloth.Nap));
        json.WriteNumber("utilization", Math.Round(Utilization.OfRatio(cloth), 6));
        PrintJson.Write(json, cloth);
        json.WriteEndObject();
    }

    private static void WriteShopping(Utf8JsonWriter json, Plan plan)
    {
        ShoppingList list = ShoppingList.Of(plan);
        json.WriteStartObject("shopping");
        json.WriteStartArray("totals");
        foreach (ShoppingTotal total in list.Totals)
        {
            json.WriteStartObject();
            json.WriteNumber("cost", total.Cost);
            JsonFile.WriteText(json, "currency", total.Currency);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("withoutPrice");
        foreach (string cloth in list.WithoutPrice)
            json.WriteStringValue(cloth);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    // Only when it was asked for: an empty list says that nothing was found.
    private static void WriteAdvice(Utf8JsonWriter json, Plan plan)
    {
        if (plan.Savings is not SavingReport savings)
            return;
        json.WriteStartArray("advice");
        foreach (SavingWay way in savings.Ways)
        {
            json.WriteStartObject();
            JsonFile.WriteText(json, "cloth", way.Before.Cloth.Name);
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(way.Kind.ToString()));
            JsonFile.WriteText(json, "what", way.What);
            JsonFile.WriteText(json, "consequence", way.Consequence);
            JsonFile.WriteLength(json, "saved_mm", way.Saved);
            if (way.SavedCost is decimal saved)
                json.WriteNumber("savedCost", saved);
            else
                json.WriteNull("savedCost");
            JsonFile.WriteLength(json, "layLength_mm", way.After.Marker.LayLength);
            JsonFile.WriteLength(json, "width_mm", way.After.Cloth.Width);
            json.WriteNumber("efficiency", Math.Round(way.After.Marker.EfficiencyRatio, 6));
            WritePurchase(json, way.After.Purchase);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WritePurchase(Utf8JsonWriter json, Purchase purchase)
    {
        json.WriteStartObject("buy");
        JsonFile.WriteLength(json, "length_mm", purchase.ToBuy);
        JsonFile.WriteText(json, "text", purchase.Text);
        if (purchase.Cost is decimal cost)
            json.WriteNumber("cost", cost);
        else
            json.WriteNull("cost");
        JsonFile.WriteText(json, "currency", purchase.Currency);
        JsonFile.WriteText(json, "otherText", purchase.OtherText);
        JsonFile.WriteLength(json, "withEnds_mm", purchase.WithEnds);
        JsonFile.WriteLength(json, "beforeWash_mm", purchase.BeforeWash);
        json.WriteEndObject();
    }

    private static void WritePlacement(Utf8JsonWriter json, Placement placement)
    {
        Polygon outline = placement.CuttingLine;
        json.WriteStartObject();
        JsonFile.WriteText(json, "piece", placement.Piece.Name);
        JsonFile.WriteText(json, "size", placement.Size);
        json.WriteNumber("copy", placement.Copy);
        json.WriteNumber("layers", placement.Layers);
        json.WriteBoolean("onFold", placement.Contact == FoldContact.OnFold);
        json.WriteBoolean("flipped", placement.Turn.Facing == Facing.Flipped);
        json.WriteNumber("turn_deg", (decimal)placement.Turn.Angle.TotalDegrees);
        WritePoints(json, "outline_mm", outline.Outer);
        JsonFile.WriteLength(json, "x_mm", Length.FromMicrometers(placement.Offset.X));
        JsonFile.WriteLength(json, "y_mm", Length.FromMicrometers(placement.Offset.Y));
        WriteRings(json, "holes_mm", outline.Holes);
        WritePoints(json, "seamLine_mm", placement.Piece.SeamLine.Mapped(placement.Map).Outer);
        WriteSegment(json, "grainline_mm", placement, placement.Piece.Grainline);
        if (placement.Piece.FoldEdge is Segment fold)
            WriteSegment(json, "foldEdge_mm", placement, fold);
        else
            json.WriteNull("foldEdge_mm");
        json.WriteStartArray("notches");
        foreach (Notch notch in placement.Piece.Notches)
            WriteNotch(json, placement, notch);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteNotch(Utf8JsonWriter json, Placement placement, Notch notch)
    {
        json.WriteStartObject();
        JsonFile.WriteText(json, "name", notch.Name);
        json.WritePropertyName("cut_mm");
        WritePoint(json, placement.Map(notch.OnCuttingLine));
        json.WritePropertyName("seam_mm");
        WritePoint(json, placement.Map(notch.OnSeamLine));
        json.WriteEndObject();
    }

    private static void WriteSegment(Utf8JsonWriter json, string key, Placement placement, Segment segment) =>
        WritePoints(json, key, [placement.Map(segment.Start), placement.Map(segment.End)]);

    private static void WriteRings(Utf8JsonWriter json, string key, ImmutableArray<ImmutableArray<Point>> rings)
    {
        json.WriteStartArray(key);
        foreach (ImmutableArray<Point> ring in rings)
            WriteRing(json, ring);
        json.WriteEndArray();
    }

    private static void WritePoints(Utf8JsonWriter json, string key, ImmutableArray<Point> points)
    {
        json.WritePropertyName(key);
        WriteRing(json, points);
    }

    // One line a ring: a line for every number would make the file hard to read.
    private static void WriteRing(Utf8JsonWriter json, ImmutableArray<Point> points)
    {
        StringBuilder text = new("[");
        foreach (Point point in points)
            text.Append(text.Length > 1 ? ", " : "").Append(PointText(point));
        json.WriteRawValue(text.Append(']').ToString());
    }

    private static void WritePoint(Utf8JsonWriter json, Point point) => json.WriteRawValue(PointText(point));

    private static string PointText(Point point) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"[{JsonFile.Millimeters(point.X)}, {JsonFile.Millimeters(point.Y)}]");
}
