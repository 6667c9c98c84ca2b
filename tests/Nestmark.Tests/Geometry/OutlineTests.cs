using CsCheck;
using Nestmark.Geometry;

namespace Nestmark.Tests.Geometry;

public sealed class OutlineTests
{
    // NetTopologySuite as judge for containment and for the hull.
    [Fact]
    public void A_simplified_outline_contains_the_true_one() =>
        Shapes.Star.Check(500,
            polygon =>
            {
                Polygon simplified = OutwardSimplification.Of(polygon, Length.FromMillimeters(2));
                double lost = Shapes.ToNts(polygon).Difference(Shapes.ToNts(simplified)).Area;
                Assert.True(lost < 1, $"{lost} lost of {Shapes.Text(polygon)}");
                Assert.True(Shapes.ToNts(simplified).IsValid);
            });

    [Fact]
    public void A_circle_of_360_corners_loses_most_of_them()
    {
        Polygon circle = Polygon.Of(Enumerable.Range(0, 360).Select(i =>
            Shapes.At(100 * Angle.FromDegrees(i).CosineRatio, 100 * Angle.FromDegrees(i).SineRatio)));
        Polygon simplified = OutwardSimplification.Of(circle, Length.FromMillimeters(0.3));
        Assert.InRange(simplified.Outer.Length, 4, 60);
        Assert.InRange(simplified.AreaSquareMillimeters / circle.AreaSquareMillimeters, 1, 1.02);
    }

    [Fact]
    public void The_convex_hull_is_that_of_NetTopologySuite() =>
        Shapes.Star.Check(200,
            polygon => Assert.Equal(Shapes.ToNts(polygon).ConvexHull().Area, (double)ConvexHull.Of(polygon.Outer).TwiceArea / 2, 1e-3 * polygon.PerimeterMillimeters));

    [Fact]
    public void Clearance_is_that_of_NetTopologySuite() =>
        Gen.Select(Shapes.Star, Shapes.Star, Gen.Int[-150_000, 150_000], Gen.Int[0, 30_000]).Check(500,
            (first, second, x, gap) =>
            {
                Polygon moved = second.Shifted(new Point(x, 90_000));
                double distance = Shapes.ToNts(first).Distance(Shapes.ToNts(moved));
                bool apart = Clearance.IsAtLeast(first, moved, Length.FromMicrometers(gap));
                Assert.True(apart == distance >= gap || Math.Abs(distance - gap) < 1e-3, $"{distance} against {gap}");
            });
}
