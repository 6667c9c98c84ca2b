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

    private static double HemEdgeMillimeters(Piece piece)
    {
        long bottom = piece.CuttingLine.Bounds.MinY;
        long[] ends = [.. piece.CuttingLine.Outer.Where(point => point.Y == bottom).Select(point => point.X)];
        return (ends.Max() - ends.Min()) / 1000.0;
    }
}
