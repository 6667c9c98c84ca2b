using System.Globalization;
using System.Text.RegularExpressions;
using Nestmark.Output;
using Nestmark.Output.Drawings;
using Nestmark.Output.Lays;
using Nestmark.Output.Tiles;
using Nestmark.Yardage;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace Nestmark.Tests.Output;

public sealed partial class MarkerPdfTests
{
    // Page sizes in units of 1/72 in, references/formats.md 6 (arithmetic); read by poppler.
    [Theory]
    [InlineData("a4", 595.276, 841.890)]
    [InlineData("a3", 841.890, 1190.551)]
    [InlineData("a0", 2383.937, 3370.394)]
    [InlineData("letter", 612, 792)]
    public void Poppler_reads_the_standard_page_size(string paper, double shortSide, double longSide)
    {
        foreach ((double width, double height) in SizesByPoppler(MarkerPdf.Write(PlanBuilder.Folded(), PaperOf(paper))))
        {
            Assert.Equal(shortSide, Math.Min(width, height), 0.01);
            Assert.Equal(longSide, Math.Max(width, height), 0.01);
        }
    }

    // Trade reference 10, tile count test: 1480 x 2200 mm, margins 10, overlap 10; A4 9 x 9, letter 8 x 9.
    [Theory]
    [InlineData(1480, 190, 9)]
    [InlineData(2200, 277, 9)]
    [InlineData(1480, 195.9, 8)]
    [InlineData(2200, 259.4, 9)]
    [InlineData(100, 190, 1)]
    [InlineData(190, 190, 1)]
    [InlineData(190.1, 190, 2)]
    public void As_many_pages_as_the_overlap_asks_for(double length, double shown, int pages) => Assert.Equal(pages, TileGrid.PagesFor(length, shown));

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    [InlineData("roll:914mm")]
    public void No_page_is_without_a_piece(string paper)
    {
        Plan plan = PlanBuilder.TwoCloths();
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(MarkerPdf.Write(plan, PaperOf(paper)));
        string[] names = ["front", "back", "sleeve", "pocket", "facing", "tie", "band"];
        Assert.All(pages, page => Assert.True(
            page.Text.Contains("Print at 100", StringComparison.Ordinal)
            || Array.Exists(names, name => page.Text.Contains(name, StringComparison.Ordinal)), page.Text));
    }

    [Fact]
    public void Pages_that_no_piece_touches_are_left_out()
    {
        // The open lay has nothing at its upper right: the grid has more places than pages are printed.
        Plan plan = PlanBuilder.Open();
        TileGrid grid = TileGrid.For(TrueSizeLay.Of(plan.Cloths[0], ""), Paper.A4);
        Assert.True(grid.Printed.Length < grid.Tiles.Length);
        Assert.Equal(grid.Printed.Length + 1, PrintedPage.Read(MarkerPdf.Write(plan, Paper.A4)).Count);
    }

    [Fact]
    public void Every_page_bears_the_name_that_the_map_gives_it()
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Folded(), Paper.A4));
        TileGrid grid = TileGrid.For(TrueSizeLay.Of(PlanBuilder.Folded().Cloths[0], ""), Paper.A4);
        for (int i = 0; i < grid.Printed.Length; i++)
        {
            Assert.Contains(grid.Printed[i].Name, pages[0].Text, StringComparison.Ordinal);
            Assert.Contains(grid.Printed[i].Name, pages[i + 1].Text, StringComparison.Ordinal);
        }
        Assert.Contains("100 %", pages[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    [InlineData("a1")]
    [InlineData("roll:914mm")]
    public void No_letter_stands_on_a_ruler_or_a_join(string paper)
    {
        foreach (Plan plan in (Plan[])[PlanBuilder.Folded(), PlanBuilder.Open(), PlanBuilder.Many(40)])
        {
            foreach (PrintedPage page in PrintedPage.Read(MarkerPdf.Write(plan, PaperOf(paper))).Skip(1))
            {
                IReadOnlyList<(double X, double Y)>[] marks = [.. page.Lines.Where(line => IsRuler(line) || IsDiamond(line))];
                Assert.Contains(marks, IsRuler);
                foreach (Letter letter in page.Letters.Where(letter => letter.Value.Trim().Length > 0))
                {
                    bool isOnMark = Array.Exists(marks, line => line.Zip(line.Skip(1)).Any(pair => ShapeTests.Meets(BoundsOf(letter), SpotOf(pair.First), SpotOf(pair.Second))));
                    Assert.False(isOnMark, $"{letter.Value} of {letter.PointSize} points at {BoundsOf(letter)}");
                }
            }
        }
    }

    [Fact]
    public void Neighboring_pages_bear_the_same_join_numbers()
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Strip(300, 60), Paper.A4));
        // One join, two diamonds on it, a number on both sides of each.
        Assert.Equal(3, pages.Count);
        Assert.All(pages.Skip(1), page => Assert.Equal(2, page.Lines.Count(IsDiamond)));
        double[] right = [.. pages[1].Lines.Where(IsDiamond).Select(line => line.Average(at => at.Y)).Order()];
        double[] left = [.. pages[2].Lines.Where(IsDiamond).Select(line => line.Average(at => at.Y)).Order()];
        Assert.Equal(right[0], left[0], 3);
        Assert.Equal(right[1], left[1], 3);
    }

    [Fact]
    public void Print_scaling_is_off()
    {
        using PdfDocument document = PdfDocument.Open(MarkerPdf.Write(PlanBuilder.Folded(), Paper.A4));
        IToken token = document.Structure.Catalog.CatalogDictionary.Data["ViewerPreferences"];
        DictionaryToken viewer = token as DictionaryToken
            ?? (DictionaryToken)document.Structure.GetObject(((IndirectReferenceToken)token).Data).Data;
        Assert.Equal("None", ((NameToken)viewer.Data["PrintScaling"]).Data);
    }

    // ISO 32000-1 annex C: 14,400 units a side. references/formats.md 4.1.
    [Fact]
    public void A_long_marker_on_a_roll_is_split_at_14400_units()
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Strip(6000, 60), PaperOf("roll:36in")));
        Assert.Equal(3, pages.Count);
        Assert.All(pages, page => Assert.True(page.WidthMillimeters <= 5080.001 && page.HeightMillimeters <= 5080));
        Assert.All(pages.Skip(1), page => Assert.Equal(914.4, page.HeightMillimeters, 3));
        Assert.Equal(5080, pages[1].WidthMillimeters, 3);
    }

    [Fact]
    public void Pieces_carry_name_size_copy_and_side()
    {
        string text = string.Concat(PrintedPage.Read(MarkerPdf.Write(PlanBuilder.TwoCloths(), PaperOf("a0"))).Select(page => page.Text));
        foreach (string word in (string[])["front M", "cut 1 on fold", "place on fold", "copy 2 of 2", "WRONG SIDE UP", "cut 1, opened out", "dart", "button"])
            Assert.Contains(word, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("café")]
    [InlineData("½")]
    [InlineData("⅝")]
    public void Text_is_text_with_accents_and_fractions(string expected)
    {
        string text = string.Concat(PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Folded(), Paper.A4)).Select(page => page.Text));
        Assert.Contains(expected, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Letters_that_the_font_lacks_are_shown_as_boxes_and_noted()
    {
        string text = PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Folded(title: "罩衫"), Paper.A4))[0].Text;
        Assert.Contains("□□", text, StringComparison.Ordinal);
        Assert.Contains("does not have", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fold_edge_is_not_drawn_as_a_line_to_cut()
    {
        Plan plan = PlanBuilder.Folded();
        Nestmark.Output.Drawings.Drawing picture = TrueSizeLay.Of(plan.Cloths[0], "").Pieces[0].Picture;
        foreach (Nestmark.Output.Drawings.PathFigure line in picture.Figures.OfType<Nestmark.Output.Drawings.PathFigure>()
            .Where(path => path.Role == Nestmark.Output.Drawings.Role.CuttingLine))
        {
            Assert.Equal(Nestmark.Output.Drawings.PathEnds.Open, line.Ends);
            Assert.All(line.Runs.SelectMany(run => run.Zip(run.Skip(1))), edge => Assert.False(edge.First.YMillimeters == 0 && edge.Second.YMillimeters == 0));
        }
    }

    [Fact]
    public void A_plan_without_placements_says_so_on_one_page() =>
        Assert.Contains("nothing to print", Assert.Single(PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Nothing(), Paper.A4))).Text, StringComparison.Ordinal);

    private static bool IsDiamond(IReadOnlyList<(double X, double Y)> line) =>
        line.Count == 5 && Math.Abs(line.Max(at => at.X) - line.Min(at => at.X) - 8) < 0.01 && Math.Abs(line[0].X - line[1].X) > 1;

    private static bool IsRuler(IReadOnlyList<(double X, double Y)> line) =>
        line.Count == 4 && Math.Abs(line[2].X - line[1].X - TestSquares.MetricSide) < 0.01 && Math.Abs(line[1].Y - line[2].Y) < 0.01;

    private static Area BoundsOf(Letter letter)
    {
        const double MillimetersPerPoint = 25.4 / 72;
        PdfRectangle box = letter.BoundingBox;
        return new Area(box.Left * MillimetersPerPoint, box.Bottom * MillimetersPerPoint, box.Right * MillimetersPerPoint, box.Top * MillimetersPerPoint);
    }

    private static Spot SpotOf((double X, double Y) place) => new(place.X, place.Y);

    private static IEnumerable<(double Width, double Height)> SizesByPoppler(byte[] pdf)
    {
        string output = Tools.Run("pdfinfo", pdf, "-f", "1", "-l", "999");
        foreach (Match match in Regex.Matches(output, @"Page +\d+ size: +([\d.]+) x ([\d.]+) pts"))
            yield return (double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture));
    }
}
