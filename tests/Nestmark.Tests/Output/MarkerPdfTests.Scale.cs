using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Output.Lays;
using Nestmark.Output.Tiles;
using Nestmark.Yardage;
using Point = Nestmark.Geometry.Point;

namespace Nestmark.Tests.Output;

public sealed partial class MarkerPdfTests
{
    // 1 in = 25.4 mm by definition: the squares are 50 mm and 50.8 mm.
    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    [InlineData("a0")]
    [InlineData("roll:36in")]
    public void Test_squares_measure_5_cm_and_2_in(string paper)
    {
        PrintedPage map = PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Folded(), PaperOf(paper)))[0];
        Assert.Contains(map.Rectangles, one => Math.Abs(one.Width - 50) < 0.01 && Math.Abs(one.Height - 50) < 0.01);
        Assert.Contains(map.Rectangles, one => Math.Abs(one.Width - 50.8) < 0.01 && Math.Abs(one.Height - 50.8) < 0.01);
    }

    // Every page shows 190 x 277 mm of A4 and starts 180 mm right of its neighbor: the pieces of the line must join.
    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    [InlineData("roll:24in")]
    public void A_line_of_2_m_keeps_its_length_across_pages(string paperName)
    {
        Plan plan = PlanBuilder.Strip(2000, 60);
        List<(double From, double To)> drawn = [.. LowerEdgeParts(plan, PaperOf(paperName)).Order()];
        Assert.Equal(0, drawn[0].From, 0.05);
        Assert.Equal(2000, drawn.Max(part => part.To), 0.05);
        for (int i = 1; i < drawn.Count; i++)
            Assert.True(drawn[i].From <= drawn.Take(i).Max(part => part.To), "A gap in the line.");
    }

    [Fact]
    public void A_line_of_5_m_is_true_within_a_tenth_of_a_millimeter()
    {
        PrintedPage page = PrintedPage.Read(MarkerPdf.Write(PlanBuilder.Strip(5000, 60), PaperOf("roll:24in")))[1];
        Assert.Contains(page.Rectangles, one => Math.Abs(one.Width - 5000) < 0.1 && Math.Abs(one.Height - 60) < 0.1);
    }

    [Theory]
    [InlineData("a4", "folded")]
    [InlineData("letter", "open")]
    [InlineData("a3", "two")]
    [InlineData("roll:914mm", "two")]
    public void Every_cutting_line_is_found_whole_across_pages(string paperName, string planName)
    {
        Plan plan = PlanOf(planName);
        Paper paper = PaperOf(paperName);
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(MarkerPdf.Write(plan, paper));
        int first = 0;
        foreach (ClothPlan cloth in plan.Cloths)
        {
            TileGrid grid = TileGrid.For(TrueSizeLay.Of(cloth, plan.Job.Title), paper);
            (Tile Tile, PrintedPage Page)[] printed = [.. grid.Printed.Zip(pages.Skip(first + 1))];
            foreach (Placement placement in cloth.Marker.Placements)
                foreach (Point point in PointsAlong(placement))
                    Assert.Contains(printed, one => ShowsInkAt(one.Tile, one.Page, point));
            first += grid.Printed.Length + 1;
        }
        Assert.Equal(pages.Count, first);
    }

    private static IEnumerable<(double From, double To)> LowerEdgeParts(Plan plan, Paper paper)
    {
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(MarkerPdf.Write(plan, paper));
        TileGrid grid = TileGrid.For(TrueSizeLay.Of(plan.Cloths[0], ""), paper);
        foreach ((Tile tile, PrintedPage page) in grid.Printed.Zip(pages.Skip(1)))
        {
            (double x, double y) = CornerOn(tile, page);
            foreach (((double X, double Y) a, (double X, double Y) b) in page.Lines.Where(line => line.Count == 5).SelectMany(line => line.Zip(line.Skip(1))))
            {
                // The lower edge of the strip lies on y = 0 of the lay and is longer than anything else there.
                if (Math.Abs(a.Y - y) > 0.02 || Math.Abs(b.Y - y) > 0.02 || Math.Abs(a.X - b.X) < 500)
                    continue;
                double from = Math.Max(Math.Min(a.X, b.X), 10);
                double to = Math.Min(Math.Max(a.X, b.X), page.WidthMillimeters - 10);
                yield return (from - x, to - x);
            }
        }
    }

    // Where the origin of the lay lies on the page: the frame's lower left corner shows the tile's.
    private static (double X, double Y) CornerOn(Tile tile, PrintedPage page) => (
        10 - tile.Shown.LeftMillimeters, page.HeightMillimeters - 10 - tile.Shown.HeightMillimeters - tile.Shown.BottomMillimeters);

    private static bool ShowsInkAt(Tile tile, PrintedPage page, Point point)
    {
        (double x, double y) = CornerOn(tile, page);
        double atX = x + point.XMillimeters;
        double atY = y + point.YMillimeters;
        return atX >= 10 && atX <= page.WidthMillimeters - 10 && atY >= 10 && atY <= page.HeightMillimeters - 10 && page.HasInkAt(atX, atY, 0.02);
    }

    // Corners and quarters of every edge that is cut.
    private static IEnumerable<Point> PointsAlong(Placement placement)
    {
        Point[] ring = [.. placement.CuttingLine.Outer];
        for (int i = 0; i < ring.Length; i++)
        {
            Point next = ring[(i + 1) % ring.Length];
            if (placement.Contact == FoldContact.OnFold && ring[i].Y == 0 && next.Y == 0)
                continue;
            for (int part = 0; part < 4; part++)
                yield return new Point(ring[i].X + (next.X - ring[i].X) * part / 4, ring[i].Y + (next.Y - ring[i].Y) * part / 4);
        }
    }

    private static Plan PlanOf(string name) => name switch
    {
        "open" => PlanBuilder.Open(),
        "two" => PlanBuilder.TwoCloths(),
        _ => PlanBuilder.Folded(),
    };

    private static Paper PaperOf(string name) => Paper.Read(name).Paper!;
}
