using System.Text.Json;
using Nestmark.Output;
using Nestmark.Tests.Input;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Tests.Output;

/// <summary>Ways to save, shopping lists and utilization in the report and on the guide sheet.</summary>
public sealed class SavingsOutputTests
{
    private const string Yaml = Jobs.Head + """
        pieces:
          a: { rectangle: 60 x 60, seam: 0, cloths: { shell: 4, lining: 1 } }
        cloths:
          shell:  { width: 100, selvage: 0, lay: open, ends: 0, buy: { price: 10 EUR per m } }
          lining: { width: 160, selvage: 0, lay: open, ends: 0 }
        """;

    private static readonly Plan Advised = SavingSearch.Make(Jobs.Good(Yaml), new Effort(null, 40, 2, 1), (_, _) => { }, CancellationToken.None);

    [Fact]
    public void The_report_tells_each_way_with_its_saving_and_what_to_buy_instead()
    {
        JsonElement way = Assert.Single(Root(Advised).GetProperty("advice").EnumerateArray());
        Assert.Equal(("shell", "widerCloth", "cloth 140 cm wide"), (Text(way, "cloth"), Text(way, "kind"), Text(way, "what")));
        Assert.Equal((1200, 1200, 1400), (way.GetProperty("saved_mm").GetDecimal(), way.GetProperty("buy").GetProperty("length_mm").GetDecimal(), way.GetProperty("width_mm").GetDecimal()));
        Assert.Equal(JsonValueKind.Null, way.GetProperty("savedCost").ValueKind);
        Assert.Equal("cheaper while a meter of it costs less than 20.00 EUR", Text(way, "consequence"));
    }

    [Fact]
    public void Without_being_asked_the_report_has_no_advice() =>
        Assert.False(Root(Advised with { Savings = null }).TryGetProperty("advice", out _));

    [Fact]
    public void The_report_adds_up_the_costs_and_names_the_cloths_without_a_price()
    {
        JsonElement shopping = Root(Advised).GetProperty("shopping");
        JsonElement total = Assert.Single(shopping.GetProperty("totals").EnumerateArray());
        Assert.Equal((24m, "EUR"), (total.GetProperty("cost").GetDecimal(), Text(total, "currency")));
        Assert.Equal("lining", Assert.Single(shopping.GetProperty("withoutPrice").EnumerateArray()).GetString());
    }

    // 4 squares of 60 cm from 2.4 m of cloth 100 cm wide: 14,400 of 24,000 cm².
    [Fact]
    public void The_report_says_how_much_of_the_cloth_bought_goes_into_pieces() =>
        Assert.Equal(0.6, Root(Advised).GetProperty("cloths")[0].GetProperty("utilization").GetDouble(), 4);

    [Fact]
    public void The_guide_tells_the_ways_on_the_sheet_of_their_cloth()
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(GuidePdf.Write(Advised));
        Assert.Equal(3, pages.Count);
        Assert.Contains("Ways to save", pages[1].Text, StringComparison.Ordinal);
        Assert.Contains("shell: cloth 140 cm wide: 1.2 m less, 1.2 m instead of 2.4 m;", pages[1].Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Ways to save", pages[2].Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Ways to save", string.Concat(PrintedPage.Read(GuidePdf.Write(Advised with { Savings = null })).Select(page => page.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_shopping_list_names_what_is_cut_from_each_cloth_and_the_sum()
    {
        string page = PrintedPage.Read(GuidePdf.Write(Advised))[0].Text;
        Assert.All((string[])["Shopping list", "2.4 m", "24.00 EUR in all; lining without a price", "a, cut 4", "a, cut 1"], words => Assert.Contains(words, page, StringComparison.Ordinal));
    }

    private static JsonElement Root(Plan plan) => JsonDocument.Parse(ReportJson.Write(plan)).RootElement;

    private static string Text(JsonElement element, string key) => element.GetProperty(key).GetString()!;
}
