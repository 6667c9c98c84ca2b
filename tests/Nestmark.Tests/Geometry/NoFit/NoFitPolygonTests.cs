using System.Collections.Immutable;
using CsCheck;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;



namespace Nestmark.Tests.Geometry.NoFit;

public sealed class NoFitPolygonTests
{
    [Fact]
    public void Two_squares_give_a_square_of_twice_the_side()
    {
        Polygon square = Shapes.Of("0 0, 10 0, 10 10, 0 10");
        NoFitRegion region = NoFitPolygon.Of(square, square);
        Assert.Equal(Shapes.Of("-10 -10, 10 -10, 10 10, -10 10").TwiceArea, Polygon.TwiceSignedArea(Assert.Single(region.Rings).AsSpan()));
        Assert.Empty(region.Slides);
        Assert.Empty(region.Fits);
    }

    [Fact]
    public void A_bar_as_wide_as_a_slot_slides_into_it()
    {
        Polygon slotted = Shapes.Of("0 0, 30 0, 30 20, 20 20, 20 10, 10 10, 10 20, 0 20");
        Polygon bar = Shapes.Of("0 0, 10 0, 10 10, 0 10");
        NoFitRegion region = NoFitPolygon.Of(slotted, bar);
        (Point start, Point end) = Assert.Single(region.Slides);
        Assert.Equal(Shapes.At(10, 10), start);
        Assert.Equal(Shapes.At(10, 20), end);
        Assert.Equal(0, region.Locate(Shapes.At(10, 15)));
        Assert.Equal(1, region.Locate(Shapes.At(10, 15) + new Point(1, 0)));
    }

    [Fact]
    public void A_dovetail_fits_at_one_place_only()
    {
        Polygon socket = Shapes.Of("0 0, 40 0, 40 20, 25 20, 30 10, 10 10, 15 20, 0 20");
        Polygon tail = Shapes.Of("0 0, 20 0, 15 10, 5 10");
        NoFitRegion region = NoFitPolygon.Of(socket, tail);
        Assert.Equal(Shapes.At(10, 10), Assert.Single(region.Fits));
    }

    [Fact]
    public void A_small_piece_may_lie_in_a_hole_of_a_large_one()
    {
        Polygon frame = Polygon.WithHoles(Shapes.Of("0 0, 50 0, 50 50, 0 50").Outer, [Shapes.Of("10 10, 40 10, 40 40, 10 40").Outer]);
        Polygon square = Shapes.Of("0 0, 20 0, 20 20, 0 20");
        NoFitRegion region = NoFitPolygon.Of(frame, square);
        Assert.Equal(-1, region.Locate(Shapes.At(15, 15)));
        Assert.Equal(0, region.Locate(Shapes.At(10, 20)));
        Assert.Equal(1, region.Locate(Shapes.At(21, 15)));
    }

    [Fact]
    public void A_piece_as_large_as_the_hole_fits_at_one_place()
    {
        ImmutableArray<Point> hole = Shapes.Of("10 10, 40 10, 40 30, 25 40, 10 40").Outer;
        Polygon frame = Polygon.WithHoles(Shapes.Of("0 0, 50 0, 50 50, 0 50").Outer, [hole]);
        NoFitRegion region = NoFitPolygon.Of(frame, Polygon.Of(hole));
        Assert.Equal(Point.Origin, Assert.Single(region.Fits));
        Assert.Single(region.Rings);
    }

    [Fact]
    public void A_closed_ring_with_a_narrow_mouth_keeps_its_inside_free()
    {
        Polygon cup = Shapes.Of("0 0, 60 0, 60 50, 35 50, 35 40, 50 40, 50 10, 10 10, 10 40, 25 40, 25 50, 0 50");
        Polygon square = Shapes.Of("0 0, 20 0, 20 20, 0 20");
        NoFitRegion region = NoFitPolygon.Of(cup, square);
        Assert.Equal(2, region.Rings.Length);
        Assert.Equal(-1, region.Locate(Shapes.At(20, 15)));
    }

    [Fact]
    public void A_shape_beyond_250_m_is_refused() =>
        Assert.Throws<ArgumentException>(() => NoFitPolygon.Of(
            Shapes.Of("0 0, 10 0, 10 10, 0 10"), Polygon.Of([new(0, 0), new(NoFitPolygon.CoordinateLimit + 1, 0), new(0, 10)])));

    // NetTopologySuite is the judge: at boundary places the shapes touch and do not overlap; just inside they overlap; just outside they are apart.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Boundary_places_touch_and_inner_places_overlap(int quarterTurns)
    {
        Turn turn = Turn.By(Angle.FromDegrees(90 * quarterTurns));
        Gen.Select(Shapes.Star, Shapes.Star).Check(60,
            (still, moving) => Judge(turn.Apply(still), moving));
    }

    private static void Judge(Polygon still, Polygon moving)
    {
        NoFitRegion region = NoFitPolygon.Of(still, moving);
        NetTopologySuite.Geometries.Geometry stillShape = Shapes.ToNts(still);
        foreach (ImmutableArray<Point> ring in region.Rings)
        {
            for (int i = 0; i < ring.Length; i++)
            {
                Point start = ring[i];
                Point end = ring[(i + 1) % ring.Length];
                Point middle = new((start.X + end.X) / 2, (start.Y + end.Y) / 2);
                double length = Math.Sqrt(Math.Pow(end.X - start.X, 2) + Math.Pow(end.Y - start.Y, 2));
                // A micrometer of rounding along edges as long as the shapes are around: at most their perimeter × 2 µm.
                Assert.True(Overlap(stillShape, moving, start) <= Sliver(still, moving), $"corner {start} of {Shapes.Text(still)} and {Shapes.Text(moving)}");
                Assert.True(Overlap(stillShape, moving, middle) <= Sliver(still, moving), $"middle {middle} of {Shapes.Text(still)} and {Shapes.Text(moving)}");
                if (length < 1000)
                    continue;
                Point inward = new((long)(-(end.Y - start.Y) / length * 20), (long)((end.X - start.X) / length * 20));
                Assert.True(Overlap(stillShape, moving, middle + inward) > 0, $"inside {middle} of {Shapes.Text(still)} and {Shapes.Text(moving)}");
                Assert.True(stillShape.Distance(Shapes.ToNts(moving.Shifted(middle))) <= 2, $"apart at {middle}");
            }
        }
    }

    private static double Sliver(Polygon still, Polygon moving) =>
        2000 * Math.Min(still.PerimeterMillimeters, moving.PerimeterMillimeters);

    private static double Overlap(NetTopologySuite.Geometries.Geometry still, Polygon moving, Point place) =>
        still.Intersection(Shapes.ToNts(moving.Shifted(place))).Area;
}
