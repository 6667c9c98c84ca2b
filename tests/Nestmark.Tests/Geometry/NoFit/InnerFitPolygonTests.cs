using System.Collections.Immutable;
using CsCheck;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Tests.Geometry.NoFit;

public sealed class InnerFitPolygonTests
{
    [Fact]
    public void A_rectangle_leaves_a_rectangle_of_places()
    {
        Box places = InnerFitPolygon.InRectangle(new Box(0, 0, 100, 60), Polygon.Of([new(5, 5), new(25, 5), new(25, 35), new(5, 35)]))!.Value;
        Assert.Equal(new Box(-5, -5, 75, 25), places);
    }

    [Fact]
    public void A_piece_as_deep_as_the_rectangle_leaves_a_line_of_places() =>
        Assert.Equal(new Box(0, 0, 70, 0), InnerFitPolygon.InRectangle(new Box(0, 0, 100, 60), Polygon.Of([new(0, 0), new(30, 0), new(30, 60)])));

    [Fact]
    public void A_piece_deeper_than_the_rectangle_fits_nowhere() =>
        Assert.Null(InnerFitPolygon.InRectangle(new Box(0, 0, 100, 60), Polygon.Of([new(0, 0), new(30, 0), new(30, 61)])));

    [Fact]
    public void A_square_fits_both_arms_of_an_L()
    {
        InnerFitRegion region = InnerFitPolygon.Of(Shapes.Of("0 0, 60 0, 60 30, 30 30, 30 60, 0 60"), Shapes.Of("0 0, 20 0, 20 20, 0 20"));
        ImmutableArray<Point> ring = Assert.Single(region.Rings);
        // Places of the lower left corner: the L made 20 mm smaller: 40 x 10 and 10 x 40 with 10 x 10 in common.
        Assert.Equal(Shapes.Of("0 0, 40 0, 40 10, 10 10, 10 40, 0 40").TwiceArea, Polygon.TwiceSignedArea(ring.AsSpan()));
    }

    [Fact]
    public void A_square_as_wide_as_the_arms_slides_along_them()
    {
        InnerFitRegion region = InnerFitPolygon.Of(Shapes.Of("0 0, 60 0, 60 20, 20 20, 20 60, 0 60"), Shapes.Of("0 0, 20 0, 20 20, 0 20"));
        Assert.Empty(region.Rings);
        Assert.True(region.Contains(Shapes.At(0, 0)));
        Assert.True(region.Contains(Shapes.At(40, 0)));
        Assert.True(region.Contains(Shapes.At(0, 33)));
        Assert.False(region.Contains(Shapes.At(1, 1)));
    }

    // NetTopologySuite as judge: a shape at a place of the region is covered by the container.
    [Fact]
    public void Random_shapes_lie_inside_at_every_corner_of_the_region() =>
        Gen.Select(Shapes.Star, Shapes.Star).Check(60,
            (container, moving) =>
            {
                Polygon large = container.Mapped(point => new Point(3 * point.X, 3 * point.Y));
                InnerFitRegion region = InnerFitPolygon.Of(large, moving);
                foreach (Point place in region.Rings.SelectMany(ring => ring))
                {
                    double outside = Shapes.ToNts(moving.Shifted(place)).Difference(Shapes.ToNts(large)).Area;
                    Assert.True(outside <= 2000 * moving.PerimeterMillimeters, $"{outside} outside at {place} of {Shapes.Text(large)} and {Shapes.Text(moving)}");
                }
            });
}
