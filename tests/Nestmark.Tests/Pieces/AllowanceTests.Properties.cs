using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed partial class AllowanceTests
{
    // Steiner's formula for convex shapes with mitred corners: area + perimeter x d + sum of d² / tan(θ/2).
    [Theory]
    [InlineData("0 0, 400 0, 400 300, 0 300", 15)]
    [InlineData("0 0, 400 0, 0 300", 15.875)]
    [InlineData("0 0, 120 -40, 300 20, 350 160, 200 300, 30 210", 10)]
    public void Area_of_a_convex_piece_follows_Steiner(string outline, double width)
    {
        Piece piece = Drafts.Of(outline, width).Made();
        double expected = piece.SeamLine.AreaSquareMillimeters + piece.SeamLine.PerimeterMillimeters * width + CornerTerms(piece.SeamLine) * width * width;
        Assert.Equal(expected, piece.CuttingLine.AreaSquareMillimeters, 0.001 * piece.CuttingLine.PerimeterMillimeters);
    }

    [Fact]
    public void One_width_all_around_is_what_NetTopologySuite_makes_of_it() => Stars.Uniform.Check(150, draft =>
    {
        Piece piece = draft.Made();
        NetTopologySuite.Geometries.Geometry expected = Judge.Mitred(piece.SeamLine, draft.Seam.TotalMillimeters, draft.PointLimitRatio);
        double difference = Judge.DifferenceSquareMillimeters(Judge.ToNts(piece.CuttingLine), expected);
        Assert.InRange(difference, 0, 0.003 * piece.CuttingLine.PerimeterMillimeters);
    });

    [Fact]
    public void The_cutting_line_is_simple_and_holds_the_seam_line() => Stars.Any.Check(400, draft =>
    {
        Piece piece = draft.Made();
        Judge.AssertAround(piece.CuttingLine, piece.SeamLine);
    });

    [Fact]
    public void No_allowance_is_narrower_than_asked_away_from_corners_of_two_widths() => Stars.Mitred.Check(150, draft =>
    {
        Piece piece = draft.Made();
        NetTopologySuite.Geometries.Polygon cut = Judge.ToNts(piece.CuttingLine);
        foreach ((Point start, Point end, Length width) in Segments(piece))
        {
            double length = Distance(start, end.X, end.Y);
            for (double along = 0; along <= length; along += 3_000)
            {
                double x = start.X + (end.X - start.X) * along / length;
                double y = start.Y + (end.Y - start.Y) * along / length;
                double outward = Math.Max(0, width.Micrometers - 2) / length;
                if (!IsNearCornerOfTwoWidths(piece, draft.PointLimitRatio, x, y))
                    Assert.True(Judge.Holds(cut, x + (end.Y - start.Y) * outward, y + (start.X - end.X) * outward, 1));
            }
        }
    });

    [Fact]
    public void Four_quarter_turns_give_the_same_piece() => Stars.Mitred.Check(60, draft =>
    {
        PieceDraft drawn = draft with { Grainline = Drafts.Line("0 0, 100 0"), Edges = [], Seam = draft.Edges[0].Width };
        HashSet<string> shapes = [];
        for (int quarter = 0; quarter < 4; quarter++)
        {
            Piece piece = drawn.Turned(Turn.By(Angle.FromDegrees(90 * quarter))).Made();
            shapes.Add(piece.CuttingLine.TwiceArea.ToString(CultureInfo.InvariantCulture) + piece.CuttingLine.Bounds);
        }
        Assert.Single(shapes);
    });

    private static IEnumerable<(Point Start, Point End, Length Width)> Segments(Piece piece)
    {
        int edge = -1;
        int count = piece.SeamLine.Outer.Length;
        for (int i = 0; i < count; i++)
        {
            Point start = piece.SeamLine.Outer[i];
            if (piece.Corners.Any(corner => corner.Place == start))
                edge++;
            yield return (start, piece.SeamLine.Outer[(i + 1) % count], piece.Edges[edge].Allowance);
        }
    }

    private static bool IsNearCornerOfTwoWidths(Piece piece, double limitRatio, double x, double y)
    {
        for (int i = 0; i < piece.Edges.Length; i++)
        {
            long arriving = piece.Edges[(i + piece.Edges.Length - 1) % piece.Edges.Length].Allowance.Micrometers;
            long leaving = piece.Edges[i].Allowance.Micrometers;
            if (arriving != leaving && Distance(piece.Corners[i].Place, x, y) <= limitRatio * Math.Max(arriving, leaving))
                return true;
        }
        return false;
    }

    private static double Distance(Point point, double x, double y) => Math.Sqrt((point.X - x) * (point.X - x) + (point.Y - y) * (point.Y - y));

    private static double CornerTerms(Polygon convex)
    {
        double sum = 0;
        int count = convex.Outer.Length;
        for (int i = 0; i < count; i++)
        {
            Point before = convex.Outer[(i + count - 1) % count] - convex.Outer[i];
            Point after = convex.Outer[(i + 1) % count] - convex.Outer[i];
            double half = Angle.Acos(Orientation.Dot(before, after) / (Length(before) * Length(after))) / 2;
            sum += Angle.Cos(half) / Angle.Sin(half);
        }
        return sum;

        static double Length(Point point) => Math.Sqrt((double)point.X * point.X + (double)point.Y * point.Y);
    }
}
