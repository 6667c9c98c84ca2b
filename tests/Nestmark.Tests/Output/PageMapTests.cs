using System.Collections.Immutable;
using Nestmark.Output;
using Nestmark.Output.Drawings;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Output.Tiles;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

public sealed class PageMapTests
{
    [Fact]
    public void A_long_lay_is_mapped_on_paper_that_lies_across_and_a_deep_one_on_upright_paper()
    {
        PdfSheet across = MapOf(PlanBuilder.Strip(4000, 600), "a4");
        PdfSheet upright = MapOf(PlanBuilder.Strip(900, 1300), "a4");
        Assert.True(across.WidthMillimeters > across.HeightMillimeters);
        Assert.True(upright.WidthMillimeters < upright.HeightMillimeters);
    }

    // 10 mm are kept free at each edge, 6 more at the left for the arrow.
    [Theory]
    [InlineData("a4", 271)]
    [InlineData("letter", 253.4)]
    [InlineData("a0", 1163)]
    public void A_long_map_is_as_wide_as_the_paper_allows(string paper, double expectedMillimeters)
    {
        Area[] cells = [.. CellsOf(MapOf(PlanBuilder.Strip(9000, 600), paper))];
        Assert.Equal(expectedMillimeters, cells.Max(cell => cell.RightMillimeters) - cells.Min(cell => cell.LeftMillimeters), 0.5);
    }

    [Theory]
    [InlineData(1400, 600)]
    [InlineData(5000, 700)]
    [InlineData(5000, 1400)]
    public void Every_page_name_is_readable_and_nothing_runs_through_it(double length, double width)
    {
        PdfSheet map = MapOf(PlanBuilder.Strip(length, width), "a4");
        Figure[] figures = [.. map.Picture.Figures];
        int names = 0;
        for (int i = 1; i < figures.Length; i++)
        {
            if (figures[i] is not TextFigure { Weight: Nestmark.Output.Fonts.FontWeight.Bold, Role: Role.Frame } name)
                continue;
            names++;
            Assert.True(name.SizeMillimeters >= 2.1, $"{name.Text} is only {name.SizeMillimeters} mm.");
            Assert.Equal(0, name.GrayRatio);
            PathFigure plate = Assert.IsType<PathFigure>(figures[i - 1]);
            Assert.Equal(1, plate.FillGrayRatio);
            Assert.True(plate.Bounds.WidthMillimeters > name.WidthMillimeters);
            Assert.Contains(CellsOf(map), cell => cell.Holds(plate.Bounds.Corners[0]) && cell.Holds(plate.Bounds.Corners[2]));
        }
        Assert.Equal(GridOf(PlanBuilder.Strip(length, width), Paper.A4).Printed.Length, names);
    }

    [Fact]
    public void The_map_says_in_which_order_pages_are_joined()
    {
        string[] words = [.. MapOf(PlanBuilder.Folded(), "a4").Picture.Figures.OfType<TextFigure>().Select(text => text.Text)];
        Assert.Contains("first each row", words);
        Assert.Contains("then the rows", words);
    }

    [Fact]
    public void A_single_page_has_nothing_to_join()
    {
        string[] words = [.. MapOf(PlanBuilder.Strip(100, 60), "a4").Picture.Figures.OfType<TextFigure>().Select(text => text.Text)];
        Assert.DoesNotContain("first each row", words);
        Assert.Contains(words, text => text.Contains("nothing to join", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    [InlineData("a0")]
    [InlineData("roll:914mm")]
    [InlineData("roll:200mm")]
    public void Nothing_of_the_map_lies_outside_the_margins(string paper)
    {
        foreach (Plan plan in (Plan[])[PlanBuilder.Folded(), PlanBuilder.Strip(9000, 600), PlanBuilder.Strip(600, 1380), PlanBuilder.Strip(100, 60)])
        {
            PdfSheet map = MapOf(plan, paper);
            Area free = new Area(0, 0, map.WidthMillimeters, map.HeightMillimeters).Grown(-9.9);
            Assert.All(map.Picture.Figures.OfType<PathFigure>(), path => Assert.True(free.Holds(path.Bounds.Corners[0]) && free.Holds(path.Bounds.Corners[2])));
            Assert.All(map.Picture.Figures.OfType<TextFigure>(), text => Assert.True(free.Holds(text.At), text.Text));
        }
    }

    private static PdfSheet MapOf(Plan plan, string paperName)
    {
        Paper paper = Paper.Read(paperName).Paper!;
        TrueSizeLay lay = TrueSizeLay.Of(plan.Cloths[0], plan.Job.Title);
        TileGrid grid = TileGrid.For(lay, paper);
        return PageMap.Draw(lay, grid, paper, new MapHeading("Page map", plan.Job.Title, "cloth", "pages", ""), [.. grid.Printed.Select(tile => tile.Name)]);
    }

    private static TileGrid GridOf(Plan plan, Paper paper) => TileGrid.For(TrueSizeLay.Of(plan.Cloths[0], ""), paper);

    private static ImmutableArray<Area> CellsOf(PdfSheet map) =>
        [.. map.Picture.Figures.OfType<PathFigure>().Where(path => path is { Role: Role.Frame, Ends: PathEnds.Closed, Line: not null }).Select(path => path.Bounds)];
}
