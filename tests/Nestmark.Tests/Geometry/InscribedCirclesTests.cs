using System.Collections.Immutable;
using CsCheck;
using Nestmark.Geometry;
using NetTopologySuite.Algorithm.Construct;
using Point = Nestmark.Geometry.Point;
using Polygon = Nestmark.Geometry.Polygon;

namespace Nestmark.Tests.Geometry;

public sealed class InscribedCirclesTests
{
    [Fact]
    public void A_square_holds_one_great_circle_and_four_small_ones_in_its_corners()
    {
        ImmutableArray<Circle> circles = InscribedCircles.Of(Polygon.Rectangle(Length.FromMillimeters(100), Length.FromMillimeters(100)), 5, 0.05);
        Assert.Equal(5, circles.Length);
        Assert.InRange(circles[0].Radius.Micrometers, 49_000, 50_000);
        // Plain geometry: between a circle of radius r and a corner of its square fits one of r (3 - 2√2).
        double corner = 50_000 * (3 - 2 * Math.Sqrt(2));
        foreach (Circle circle in circles[1..])
            Assert.InRange(circle.Radius.Micrometers, 0.9 * corner, 1.1 * corner);
    }

    // Judge: NetTopologySuite 2.6, MaximumInscribedCircle.
    [Fact]
    public void The_first_circle_is_the_largest_that_fits() => Shapes.Star.Check(60, shape =>
    {
        NetTopologySuite.Geometries.Polygon outline = Shapes.ToNts(shape);
        double largest = new MaximumInscribedCircle(outline, 1).GetRadiusLine().Length;
        Circle found = InscribedCircles.Of(shape, 1, 0.1).Single();
        Assert.InRange(found.Radius.Micrometers, 0.97 * largest - 2, largest + 2);
    });

    // Judge: NetTopologySuite 2.6, distances.
    [Fact]
    public void Circles_stay_inside_and_apart() => Shapes.Star.Check(60, shape =>
    {
        NetTopologySuite.Geometries.Polygon outline = Shapes.ToNts(shape);
        ImmutableArray<Circle> circles = InscribedCircles.Of(shape, 16, 0.08);
        for (int i = 0; i < circles.Length; i++)
        {
            NetTopologySuite.Geometries.Point center = new(circles[i].Center.X, circles[i].Center.Y);
            Assert.True(outline.Contains(center));
            Assert.True(outline.Boundary.Distance(center) >= circles[i].Radius.Micrometers - 2);
            for (int j = 0; j < i; j++)
            {
                double apart = center.Distance(new NetTopologySuite.Geometries.Point(circles[j].Center.X, circles[j].Center.Y));
                Assert.True(apart >= circles[i].Radius.Micrometers + circles[j].Radius.Micrometers - 4);
            }
        }
    });

    [Fact]
    public void Holes_stay_free()
    {
        Polygon ring = Polygon.WithHoles(Square(0, 100_000), [Square(20_000, 80_000)]);
        Assert.All(InscribedCircles.Of(ring, 16, 0.1), circle => Assert.True(circle.Radius.Micrometers <= 15_000));
    }

    private static Point[] Square(long from, long to) => [new(from, from), new(to, from), new(to, to), new(from, to)];
}
