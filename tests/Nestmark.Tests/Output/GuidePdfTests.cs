using Nestmark.Output;
using Nestmark.Output.Guide;
using Nestmark.Yardage;
using Point = Nestmark.Geometry.Point;

namespace Nestmark.Tests.Output;

public sealed class GuidePdfTests
{
    [Fact]
    public void Metric_jobs_are_printed_on_A4_and_others_on_letter()
    {
        PrintedPage metric = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded()))[0];
        PrintedPage imperial = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded(MeasureSystem.Imperial)))[0];
        Assert.Equal((210, 297), (Math.Round(Math.Min(metric.WidthMillimeters, metric.HeightMillimeters), 3), Math.Round(Math.Max(metric.WidthMillimeters, metric.HeightMillimeters), 3)));
        Assert.Equal(8.5 * 25.4, Math.Min(imperial.WidthMillimeters, imperial.HeightMillimeters), 3);
        Assert.Equal(11 * 25.4, Math.Max(imperial.WidthMillimeters, imperial.HeightMillimeters), 3);
    }

    [Fact]
    public void Each_cloth_has_one_page_and_several_have_a_shopping_list_before_them()
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(GuidePdf.Write(PlanBuilder.TwoCloths()));
        Assert.Equal(3, pages.Count);
        Assert.Single(PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded())));
        foreach (ClothPlan cloth in PlanBuilder.TwoCloths().Cloths)
        {
            Assert.Contains(cloth.Cloth.Name, pages[0].Text, StringComparison.Ordinal);
            Assert.Contains(cloth.Purchase.Text, pages[0].Text, StringComparison.Ordinal);
        }
        Assert.Contains("EUR in all", pages[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Twenty_five_placements_fit_one_page_in_6_points_or_more()
    {
        PrintedPage page = Assert.Single(PrintedPage.Read(GuidePdf.Write(PlanBuilder.Many(25))));
        Assert.True(page.Letters.Min(letter => letter.PointSize) >= 6, "Letters are too small.");
        Assert.Contains("25 of 25", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_too_long_for_the_page_goes_on_behind_it_and_loses_no_row()
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Many(120)));
        Assert.True(pages.Count > 1);
        string text = string.Concat(pages.Select(page => page.Text));
        Assert.All(Enumerable.Range(1, 120), copy => Assert.Contains(FormattableString.Invariant($"{copy} of 120"), text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    [InlineData(60)]
    public void Nothing_is_printed_outside_the_margins(int placements)
    {
        byte[][] files = [GuidePdf.Write(PlanBuilder.Many(placements)), GuidePdf.Write(PlanBuilder.Various(placements))];
        foreach (PrintedPage page in files.SelectMany(PrintedPage.Read))
        {
            Assert.All(page.Letters, letter => Assert.InRange(letter.Location.Y * 25.4 / 72, 9, page.HeightMillimeters - 9));
            Assert.All(page.Lines.SelectMany(line => line), at => Assert.InRange(at.X, 9.5, page.WidthMillimeters - 9.5));
        }
    }

    [Fact]
    public void The_length_to_buy_stands_there_in_both_systems_with_its_cost()
    {
        string text = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded()))[0].Text;
        foreach (string words in (string[])["Buy 1.6 m (14/8 yd)", "29.60 EUR", "shrinks 5%", "Lay length: 141.5 cm (55 11/16\")", "63."])
            Assert.Contains(words, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_without_a_place_are_named_with_the_reason() =>
        Assert.Contains("collar M: It is 72 cm deep", PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded()))[0].Text, StringComparison.Ordinal);

    // The tie lies at x 540, y 450 mm; its arrow runs from 140 to 525 mm along it, 26 mm up. The cloth's end adds 20 mm.
    [Fact]
    public void Both_ends_of_the_grainline_are_measured_from_the_cut_end_and_the_fold()
    {
        Table table = PlaceTable.Of(PlanBuilder.Folded().Cloths[0], MeasureSystem.Metric);
        Assert.Equal(["70.0", "47.6", "108.5", "47.6"], table.Rows[5].TakeLast(4));
    }

    // From the lower edge of open cloth the selvage of 10 mm counts too; the band lies at 45 degrees, so its two ends differ.
    [Fact]
    public void On_open_cloth_the_selvage_counts_and_a_bias_piece_rises()
    {
        ClothPlan cloth = PlanBuilder.Open().Cloths[0];
        Table table = PlaceTable.Of(cloth, MeasureSystem.Metric);
        Assert.Equal(["16.1", "30.0", "54.9", "30.0"], table.Rows[0].TakeLast(4));
        double rise = double.Parse(table.Rows[3][^1], System.Globalization.CultureInfo.InvariantCulture) - double.Parse(table.Rows[3][^3], System.Globalization.CultureInfo.InvariantCulture);
        double run = double.Parse(table.Rows[3][^2], System.Globalization.CultureInfo.InvariantCulture) - double.Parse(table.Rows[3][^4], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(run, rise, 0.11);
        Assert.Equal("wrong side up · 180°", table.Rows[2][5]);
    }

    [Theory]
    [InlineData(MeasureSystem.Metric)]
    [InlineData(MeasureSystem.Imperial)]
    public void Headings_of_the_table_do_not_run_into_each_other(MeasureSystem system)
    {
        foreach (Plan plan in (Plan[])[PlanBuilder.Folded(system), PlanBuilder.Open(system)])
        {
            PrintedPage page = PrintedPage.Read(GuidePdf.Write(plan))[0];
            string[] cut = ["to cut end", "to " + (plan.Cloths[0].Marker.Surface.HasFold ? "fold" : "edge")];
            Assert.All(cut, heading => Assert.Contains(heading, page.Text, StringComparison.Ordinal));
            foreach (string heading in (string[])["Near end, ", "to cut end"])
            {
                double y = page.Letters[page.Text.IndexOf(heading, StringComparison.Ordinal)].Location.Y;
                (double Start, double End)[] row = [.. page.Letters.Where(letter => Math.Abs(letter.Location.Y - y) < 0.1).Select(letter => (letter.StartBaseLine.X, letter.EndBaseLine.X)).Order()];
                Assert.All(row.Zip(row.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Start + 0.05));
            }
        }
    }

    [Fact]
    public void A_reason_that_names_its_piece_does_not_name_it_twice()
    {
        ClothPlan cloth = PlanBuilder.Nothing().Cloths[0];
        string[] reasons = ["front M is 72 cm deep.", "It is deep."];
        ClothPlan refused = cloth with { Marker = cloth.Marker with { Unplaced = [.. reasons.Select(reason => new Nestmark.Nesting.Unplaced("front", "M", reason))] } };
        Assert.Equal(["front M is 72 cm deep.", "front M: It is deep."], GuideWords.NotPlaced(refused));
    }

    [Theory]
    [InlineData(MeasureSystem.Imperial, 114.3, "Sold in steps of 1/8 yd: buy")]
    [InlineData(MeasureSystem.Metric, 100, "Sold in steps of 10 cm: buy")]
    public void The_step_of_the_shop_reads_as_the_shop_says_it(MeasureSystem system, double stepMillimeters, string expected)
    {
        ClothPlan cloth = PlanBuilder.Folded(system).Cloths[0];
        Nestmark.Cloths.BuyingRule rule = cloth.Cloth.Buying with { Step = Nestmark.Geometry.Length.FromMillimeters(stepMillimeters) };
        ClothPlan other = cloth with { Cloth = cloth.Cloth with { Buying = rule } };
        Assert.Contains(GuideWords.BuyingSteps(other, system), step => step.StartsWith(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Measures_count_ends_and_selvage()
    {
        ClothPlan open = PlanBuilder.Open().Cloths[0];
        Assert.Equal((Nestmark.Geometry.Length.FromMillimeters(20), Nestmark.Geometry.Length.FromMillimeters(10)), PlaceTable.Measured(Point.Origin, open.Marker.Placements[0], open));
        ClothPlan folded = PlanBuilder.Folded().Cloths[0];
        Assert.Equal((Nestmark.Geometry.Length.FromMillimeters(20), Nestmark.Geometry.Length.Zero), PlaceTable.Measured(Point.Origin, folded.Marker.Placements[0], folded));
    }

    [Fact]
    public void Only_turned_over_pieces_are_hatched_and_the_legend_says_so()
    {
        PrintedPage open = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Open()))[0];
        PrintedPage folded = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded()))[0];
        Assert.Contains("hatched: wrong side up", open.Text, StringComparison.Ordinal);
        Assert.InRange(open.Lines.Count(IsHatch), 30, 1000);
        Assert.DoesNotContain("hatched", folded.Text, StringComparison.Ordinal);
        Assert.Equal(0, folded.Lines.Count(IsHatch));
    }

    [Fact]
    public void Accents_and_fractions_are_text()
    {
        string text = PrintedPage.Read(GuidePdf.Write(PlanBuilder.Folded()))[0].Text;
        Assert.Contains("café ½", text, StringComparison.Ordinal);
        Assert.Contains("pocket ⅝", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new[] { 1 }, "1")]
    [InlineData(new[] { 1, 2 }, "1, 2")]
    [InlineData(new[] { 1, 2, 3, 7 }, "1–3, 7")]
    public void Runs_of_numbers_are_drawn_together(int[] numbers, string expected) => Assert.Equal(expected, GuideWords.Ranges(numbers));

    private static bool IsHatch(IReadOnlyList<(double X, double Y)> line) =>
        line.Count == 2 && Math.Abs(Math.Abs(line[1].X - line[0].X) - Math.Abs(line[1].Y - line[0].Y)) < 0.002 && Math.Abs(line[1].X - line[0].X) > 0.5;
}
