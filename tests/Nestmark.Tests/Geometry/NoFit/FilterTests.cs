using CsCheck;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Tests.Geometry.NoFit;

/// <summary>The quick filters leave out nothing that matters, near zero and at the limit of coordinates.</summary>
public sealed class FilterTests
{
    private static readonly Gen<Point> Places =
        from scale in Gen.Int[0, 3].Select(choice => new long[] { 3, 1_000, 2_000_000, 500_000_000 }[choice])
        from x in Gen.Int[-1000, 1000]
        from y in Gen.Int[-1000, 1000]
        select new Point(x * scale / 1000, y * scale / 1000);

    private static readonly Gen<Point[]> Rings = Places.Array[8, 40];

    [Fact]
    public void Every_segment_that_touches_a_line_is_found() => Rings.Check(400, places =>
    {
        List<ConvolutionSegment> segments = [.. Enumerable.Range(0, places.Length).Select(i => new ConvolutionSegment(places[i], places[(i + 1) % places.Length], 1))];
        LineFilter filter = new(segments);
        for (int i = 0; i < places.Length; i++)
        {
            Point end = places[(i + 3) % places.Length];
            int[] found = filter.Near(places[i], end - places[i]).ToArray();
            Assert.Equal(found.Distinct().Order(), found);
            Assert.Empty(Enumerable.Range(0, segments.Count)
                .Where(j => Orientation.Of(places[i], end, segments[j].Start) * Orientation.Of(places[i], end, segments[j].End) <= 0)
                .Except(found));
        }
    });

    [Fact]
    public void Every_direction_within_a_wedge_is_found() => Rings.Check(400, places =>
    {
        DirectionFilter filter = new(places);
        for (int i = 0; i + 2 < places.Length; i++)
        {
            (Point low, Point high) = (places[i], places[i + 1]);
            int[] found = filter.Within(low, high).ToArray();
            Assert.Empty(Enumerable.Range(0, places.Length).Where(j => IsWithin(low, high, places[(j + 1) % places.Length] - places[j])).Except(found));
        }
    });

    // Of scattered places hardly any edge lies along a given line, so most must have been left out.
    [Fact]
    public void Most_of_what_is_far_from_a_line_is_left_out()
    {
        List<ConvolutionSegment> segments = [.. Enumerable.Range(1, 100).Select(i => new ConvolutionSegment(new(i, 1_000 * i), new(i + 50, 1_000 * i + 10), 1))];
        Assert.Equal([49], new LineFilter(segments).Near(new(0, 50_005), new(1, 0)).ToArray());
    }

    private static bool IsWithin(Point low, Point high, Point direction) =>
        (Int128)low.X * direction.Y - (Int128)low.Y * direction.X >= 0 && (Int128)direction.X * high.Y - (Int128)direction.Y * high.X >= 0;
}
