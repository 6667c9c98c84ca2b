using CsCheck;
using Nestmark.Geometry;

namespace Nestmark.Tests.Geometry;

public sealed class InteriorOverlapTests
{
    [Theory]
    [InlineData("0 0, 10 0, 10 10, 0 10", "10 0, 20 0, 20 10, 10 10", false)] // side by side
    [InlineData("0 0, 10 0, 10 10, 0 10", "10 10, 20 10, 20 20, 10 20", false)] // corner to corner
    [InlineData("0 0, 10 0, 10 10, 0 10", "0 0, 10 0, 10 10, 0 10", true)] // the same
    [InlineData("0 0, 10 0, 10 10, 0 10", "2 2, 4 2, 4 4, 2 4", true)] // inside
    [InlineData("0 0, 10 0, 10 10, 0 10", "0 0, 10 0, 5 5", true)] // inside, along an edge
    [InlineData("0 0, 30 0, 30 30, 20 30, 20 10, 10 10, 10 30, 0 30", "10 10, 20 10, 20 40, 10 40", false)] // a bar in a slot
    [InlineData("0 0, 10 0, 10 10, 0 10", "5 -5, 15 5, 5 15, -5 5", true)] // edges cross
    [InlineData("0 0, 10 0, 10 10, 0 10", "-5 5, 5 -5, -5 -5", false)] // a corner on an edge
    [InlineData("0 0, 20 0, 20 10, 10 5, 0 10", "10 5, 20 10, 0 10", false)] // fills a notch
    public void Overlap_is_told_from_touching(string first, string second, bool overlap)
    {
        for (int quarter = 0; quarter < 4; quarter++)
        {
            Turn turn = Turn.By(Angle.FromDegrees(90 * quarter));
            Assert.Equal(overlap, InteriorOverlap.Of(turn.Apply(Shapes.Of(first)), turn.Apply(Shapes.Of(second)), Point.Origin));
            Assert.Equal(overlap, InteriorOverlap.Of(turn.Apply(Shapes.Of(second)), turn.Apply(Shapes.Of(first)), Point.Origin));
        }
    }

    [Fact]
    public void A_shape_inside_a_hole_does_not_overlap()
    {
        Polygon frame = Polygon.WithHoles(Shapes.Of("0 0, 50 0, 50 50, 0 50").Outer, [Shapes.Of("10 10, 40 10, 40 40, 10 40").Outer]);
        Assert.False(InteriorOverlap.Of(frame, Shapes.Of("10 10, 40 10, 40 40, 10 40"), Point.Origin));
        Assert.True(InteriorOverlap.Of(frame, Shapes.Of("10 10, 40 10, 40 40, 10 40"), new Point(1, 0)));
    }

    // Far out on a long lay the products no longer fit 64 bits in half micrometers.
    [Fact]
    public void Shapes_200_m_out_are_judged_exactly()
    {
        Polygon far = Shapes.Of("0 0, 10 0, 10 10, 0 10").Shifted(new Point(200_000_000, 0));
        Assert.False(InteriorOverlap.Of(far, Shapes.Of("0 0, 10 0, 10 10, 0 10"), new Point(200_010_000, 0)));
        Assert.True(InteriorOverlap.Of(far, Shapes.Of("0 0, 10 0, 10 10, 0 10"), new Point(200_009_999, 0)));
    }

    [Fact]
    public void Random_shapes_are_judged_as_NetTopologySuite_does() =>
        Gen.Select(Shapes.Star, Shapes.Star, Gen.Int[-60_000, 60_000], Gen.Int[-60_000, 60_000]).Check(500,
            (first, second, x, y) =>
            {
                double area = Shapes.ToNts(first).Intersection(Shapes.ToNts(second.Shifted(new Point(x, y)))).Area;
                bool overlap = InteriorOverlap.Of(first, second, new Point(x, y));
                // Below a square micrometer the judge's doubles decide nothing.
                Assert.True(overlap == area > 0 || area < 1, $"{area}: {Shapes.Text(first)} and {Shapes.Text(second)} at {x}, {y}");
            });
}
