using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed partial class AllowanceTests
{
    private const string Tapered = "-200 0, 200 0, 240 400, -240 400";
    private const string Flared = "-200 0, 200 0, 160 400, -160 400";

    // references/trade.md 3.3: 40 cm at the hem, 1 cm per 10 cm on each side, hem 4 cm: reflecting gives 40.8 cm, extending 39.2; a flare reverses the signs.
    [Theory]
    [InlineData(Tapered, AllowanceEnds.Reflected, 40.8)]
    [InlineData(Tapered, AllowanceEnds.Mitred, 39.2)]
    [InlineData(Flared, AllowanceEnds.Reflected, 39.2)]
    [InlineData(Flared, AllowanceEnds.Mitred, 40.8)]
    public void A_hem_on_slanted_sides_is_as_wide_as_worked_out(string leg, AllowanceEnds ends, double expectedCentimeters)
    {
        Piece piece = Drafts.Of(leg).WithEdge("A-B", 40, ends).Made();
        Assert.InRange(HemEdgeMillimeters(piece), 10 * expectedCentimeters - 0.002, 10 * expectedCentimeters + 0.002);
    }

    // Paper way of references/trade.md 3.3: folded up, the hem lies exactly on what is above it.
    [Theory]
    [InlineData(Tapered, 15)]
    [InlineData(Flared, 15)]
    [InlineData("-200 0, 200 0, 210 12, 215 30, 216 70, 240 400, -240 400, -216 70, -215 30, -210 12", 15)]
    [InlineData("-200 0, 200 0, 210 12, 215 30, 216 70, 240 400, -240 400, -216 70, -215 30, -210 12", 0)]
    public void A_reflected_hem_folded_up_lies_on_the_piece(string outline, double sideMillimeters)
    {
        OutlineVertex[] vertices = [.. Drafts.Places(outline).Select((place, i) => new OutlineVertex(place, i is 0 or 1 ? VertexKind.Marked : VertexKind.Curve))];
        Piece piece = Drafts.Of(vertices, sideMillimeters).WithEdge("A-B", 40, AllowanceEnds.Reflected).Made();
        long hemLine = piece.Corners[0].Place.Y;
        Polygon moved = piece.CuttingLine.Shifted(new Point(0, -hemLine));
        Polygon hemUp = Turn.By(Angle.Zero).Apply(Assert.Single(Clipping.AboveXAxis(moved.Mapped(point => point with { Y = -point.Y }))));
        Polygon strip = Polygon.Of(Drafts.Places("-100 0, 1000 0, 1000 40, -100 40"));
        Polygon above = Assert.Single(Clipping.Intersection(moved, strip));
        Assert.InRange(Judge.DifferenceSquareMillimeters(Judge.ToNts(hemUp), Judge.ToNts(above)), 0, 0.4);
        Assert.Equal(40_000, hemUp.Bounds.MaxY);
    }

    // Geometry: turned up along a circle of radius R, an end at depth d whose foot on the circle is s from the corner comes 2ds/R beside its mirror
    // image about the tangent. Hem 40, R = 1 m, tangents at the corners slanted by asin(0.2): sides to 60 (to 80) lean in by atan(140/400) (120/400),
    // so s = 40 tan(19.29° - 11.54°) = 5.44 (3.61), and 0.44 mm (0.29 mm): less than the 3 mm of cut hems (references/trade.md 4.4 [VN p.210]). Looked at to a depth of 38; the hem's first chord,
    // 1 mm long and rounded to micrometers, slants from the tangent by up to a thousandth, which is 0.08 mm at that depth.
    [Theory]
    [InlineData(60, 0.436)]
    [InlineData(80, 0.289)]
    public void A_reflected_hem_of_radius_1_m_turned_up_along_its_curve_lies_on_the_piece(double topMillimeters, double expectedMillimeters)
    {
        PieceDraft draft = CurvedHem(topMillimeters);
        Piece piece = draft.Made();
        Assert.DoesNotContain("turned up", draft.Notes(), StringComparison.Ordinal);
        Point center = piece.Corners[0].Place - draft.Outline[0].Point + Point.FromMillimeters(0, 1000);
        double farthest = 0;
        foreach (Point place in AlongOutline(piece.CuttingLine, 500))
        {
            Point spoke = place - center;
            if (spoke.NormMicrometers is < 1_002_000 or > 1_038_000 || spoke.Y > -900_000)
                continue;
            double turnedUp = (2_000_000 - spoke.NormMicrometers) / spoke.NormMicrometers;
            farthest = Math.Max(farthest, Judge.DistanceToOutline(piece.CuttingLine, center.X + turnedUp * spoke.X, center.Y + turnedUp * spoke.Y));
        }
        Assert.InRange(farthest / 1000, expectedMillimeters - 0.15, expectedMillimeters + 0.15);
    }

    // The same arithmetic for sides that lean in by 45 degrees: s = 40 tan(45° - 11.54°) = 26, so 2.1 mm.
    [Fact]
    public void A_reflected_hem_that_curves_away_from_slanted_sides_is_noted()
    {
        Assert.Contains("at corner A that its allowance, turned up, ends more than 1 mm beside", CurvedHem(-100).Notes(), StringComparison.Ordinal);
        Assert.Contains("at corner B that its allowance, turned up, ends more than 1 mm beside", CurvedHem(-100).Notes(), StringComparison.Ordinal);
        Assert.Empty(Drafts.Of("-200 0, 200 0, 100 100, -100 100").WithEdge("A-B", 40, AllowanceEnds.Reflected).Notes());
    }

    // references/trade.md 3.3, squared: square to this seam, through the point where the crossing cut edge meets its seam line: b / sinθ beyond the corner.
    [Theory]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(130)]
    public void A_squared_end_stands_square_where_the_crossing_cut_edge_meets_the_seam(double degrees)
    {
        Angle angle = Angle.FromDegrees(180 - degrees);
        Point top = new((long)(300_000 + 400_000 * angle.CosineRatio), (long)(400_000 * angle.SineRatio));
        Piece piece = Drafts.Of([new(Point.Origin, VertexKind.Joint), new(new Point(300_000, 0), VertexKind.Joint), new(top, VertexKind.Joint), new(new Point(-600_000, 400_000), VertexKind.Joint)])
            .WithEdge("A-B", 12, AllowanceEnds.Squared).WithEdge("B-C", 8).Made();
        Point corner = piece.Corners[1].Place;
        long beyond = (long)Math.Round(8_000 / angle.SineRatio);
        Assert.InRange(Judge.DistanceToOutline(piece.CuttingLine, corner.X + beyond, corner.Y - 12_000), 0, 1);
        Assert.InRange(Judge.DistanceToOutline(piece.CuttingLine, corner.X + beyond, corner.Y - 6_000), 0, 1);
        Assert.InRange(Judge.DistanceToOutline(piece.CuttingLine, corner.X + beyond, corner.Y), 0, 1);
    }

    // Equal ends for both partners: angles that add to 180 degrees give sleeves and bodices the same end (references/trade.md 3.3, common practice).
    [Fact]
    public void Partners_with_squared_ends_have_cut_edges_of_one_length()
    {
        Piece sharp = Drafts.Of("0 0, 300 0, 240 200, 60 200", 10).WithEdge("A-B", 10, AllowanceEnds.Squared).Made();
        Piece blunt = Drafts.Of("0 0, 300 0, 360 200, -60 200", 10).WithEdge("A-B", 10, AllowanceEnds.Squared).Made();
        Assert.Equal(HemEdgeMillimeters(sharp), HemEdgeMillimeters(blunt), 0.002);
    }

    /// <summary>A piece 40 cm wide at the hem, an arc of radius 1 m about (0, 1000); sides run to (±top, 420), or at 45 degrees inward to ±100 for a top below zero.</summary>
    private static PieceDraft CurvedHem(double topMillimeters)
    {
        IEnumerable<OutlineVertex> hem = Enumerable.Range(-200, 401).Select(i => new OutlineVertex(
            Point.FromMillimeters(i, 1000 - Math.Sqrt(1_000_000 - i * i)), Math.Abs(i) == 200 ? VertexKind.Marked : VertexKind.Curve));
        (double x, double y) = topMillimeters < 0 ? (100, 120) : (topMillimeters, 420);
        OutlineVertex[] top = [new(Point.FromMillimeters(x, y), VertexKind.Joint), new(Point.FromMillimeters(-x, y), VertexKind.Joint)];
        return Drafts.Of([.. hem, .. top]).WithEdge("A-B", 40, AllowanceEnds.Reflected);
    }

    private static IEnumerable<Point> AlongOutline(Polygon polygon, double stepMicrometers)
    {
        for (int i = 0; i < polygon.Outer.Length; i++)
        {
            Point start = polygon.Outer[i];
            Point run = polygon.Outer[(i + 1) % polygon.Outer.Length] - start;
            for (double along = 0; along < run.NormMicrometers; along += stepMicrometers)
                yield return start + new Point((long)(run.X * along / run.NormMicrometers), (long)(run.Y * along / run.NormMicrometers));
        }
    }

    private static double HemEdgeMillimeters(Piece piece)
    {
        long bottom = piece.CuttingLine.Bounds.MinY;
        long[] ends = [.. piece.CuttingLine.Outer.Where(point => point.Y == bottom).Select(point => point.X)];
        return (ends.Max() - ends.Min()) / 1000.0;
    }
}
