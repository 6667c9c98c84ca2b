using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Tests.Pieces;

namespace Nestmark.Tests.Geometry;

public sealed class ClippingTests
{
    private static readonly Polygon Square = Polygon.Of(Drafts.Places("0 0, 40 0, 40 40, 0 40"));
    private static readonly Polygon Shifted = Square.Shifted(Point.FromMillimeters(10, 20));

    // Areas by arithmetic: two squares of 40 that overlap in 30 x 20.
    [Fact]
    public void Union_intersection_and_difference_have_the_areas_of_the_squares()
    {
        Assert.Equal(600, Clipping.OverlapSquareMillimeters(Square, Shifted), 1e-9);
        Assert.Equal(1000, Clipping.TotalSquareMillimeters(Clipping.Difference(Square, Shifted)), 1e-9);
        Assert.Equal(2600, Clipping.TotalSquareMillimeters(Clipping.Union([Square, Shifted])), 1e-9);
    }

    [Fact]
    public void Difference_can_leave_a_hole_or_parts()
    {
        Polygon inside = Polygon.Of(Drafts.Places("10 10, 20 10, 20 20, 10 20"));
        Polygon across = Polygon.Of(Drafts.Places("-5 10, 50 10, 50 20, -5 20"));
        Assert.Single(Assert.Single(Clipping.Difference(Square, inside)).Holes);
        ImmutableArray<Polygon> parts = Clipping.Difference(Square, across);
        Assert.Equal("0 0, 40 0, 40 10, 0 10", Drafts.Text(parts[0].Outer));
        Assert.Equal("0 20, 40 20, 40 40, 0 40", Drafts.Text(parts[1].Outer));
    }

    [Fact]
    public void Squares_that_touch_do_not_overlap()
    {
        Polygon beside = Square.Shifted(Point.FromMillimeters(40, 0));
        Assert.Empty(Clipping.Intersection(Square, beside));
        Assert.Equal("0 0, 40 0, 80 0, 80 40, 40 40, 0 40", Drafts.Text(Assert.Single(Clipping.Union([Square, beside])).Outer));
    }

    [Fact]
    public void Nothing_united_is_nothing() => Assert.Empty(Clipping.Union([]));

    [Theory]
    [InlineData("0 0, 40 0, 40 40, 0 40", true)]
    [InlineData("0 0, 40 0, 40 40, 20 -1, 0 40", false)]
    [InlineData("0 0, 40 0, 40 40, 20 0, 0 40", false)]
    public void Crossing_and_touching_rings_are_not_simple(string ring, bool expected) =>
        Assert.Equal(expected, Clipping.IsSimple(Polygon.Of(Drafts.Places(ring))));

    [Fact]
    public void Covers_counts_touching_as_inside()
    {
        Assert.True(Clipping.Covers(Square, Square));
        Assert.False(Clipping.Covers(Square, Square.Shifted(new Point(1, 0))));
    }

    [Fact]
    public void Positive_winding_drops_clockwise_loops_and_keeps_double_ones()
    {
        // A square with a clockwise ear at one corner, and one run around twice.
        Assert.Equal("0 0, 40 0, 40 40, 0 40", Text([(0, 0), (40, 0), (40, 40), (0, 40), (0, 20), (-10, 20), (-10, 30), (0, 30), (0, 20)]));
        Assert.Equal("0 0, 40 0, 40 40, 0 40", Text([(0, 0), (40, 0), (40, 40), (0, 40), (0, 0), (40, 0), (40, 40), (0, 40)]));
    }

    [Fact]
    public void Above_the_x_axis_lies_the_upper_half() =>
        Assert.Equal("0 0, 40 0, 40 30, 0 30", Drafts.Text(Assert.Single(Clipping.AboveXAxis(Square.Shifted(Point.FromMillimeters(0, -10)))).Outer));

    private static string Text((double X, double Y)[] ring)
    {
        Polygon polygon = Assert.Single(Clipping.PositiveWinding([.. ring.Select(point => (1000 * point.X, 1000 * point.Y))]));
        return Drafts.Text(polygon.Outer.Where(point => point != new Point(0, 20_000) && point != new Point(0, 30_000)));
    }
}
