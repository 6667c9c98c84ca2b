using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Nestmark.Geometry;
using NetTopologySuite.Geometries;
using Point = Nestmark.Geometry.Point;

namespace Nestmark.Tests.Geometry;

public sealed class PolygonValidityTests
{
    [Theory]
    [InlineData("0 0, 40 0, 40 30", "")]
    [InlineData("0 0, 40 40, 40 0, 0 40", "Crossing 20 20")]
    [InlineData("0 0, 40 0, 40 40, 20 0, 0 40", "Touching 20 0")]
    [InlineData("0 0, 40 0, 40 20, 30 20, 30 0, 10 0, 10 20", "Touching 30 0")]
    [InlineData("0 0, 40 0, 60 0, 50 0, 40 40", "Repeated 50 0")]
    [InlineData("0 0, 10 0, 10 10, 0 10, 0 0, -10 0, -10 -10, 0 -10", "Touching 0 0")]
    public void Places_where_a_ring_meets_itself_are_named(string ring, string expected)
    {
        ImmutableArray<RingFlaw> flaws = PolygonValidity.FlawsOf(Ring(ring), 1);
        string found = string.Join("; ", flaws.Select(flaw => $"{flaw.Kind} {flaw.Place.X} {flaw.Place.Y}"));
        Assert.Equal(expected, found);
    }

    [Fact]
    public void Edges_that_run_along_each_other_are_told_from_a_touch()
    {
        ImmutableArray<RingFlaw> flaws = PolygonValidity.FlawsOf(Ring("0 0, 40 0, 40 20, 30 20, 30 0, 10 0, 10 20"), 9);
        Assert.Contains(new RingFlaw(RingFlawKind.Repeated, new Point(10, 0), 0, 4), flaws);
    }

    [Fact]
    public void Search_ends_after_the_places_asked_for() =>
        Assert.Equal(2, PolygonValidity.FlawsOf(Ring("0 0, 0 40, 10 0, 10 40, 20 0, 20 40, -5 20"), 2).Length);

    [Fact]
    public void A_ring_is_flawed_exactly_when_NetTopologySuite_says_so() =>
        Gen.Select(Gen.Long[0, 12], Gen.Long[0, 12], (x, y) => new Point(x, y)).Array[4, 9].Check(3000, points =>
        {
            ImmutableArray<Point> ring = WithoutRepeats(points);
            if (ring.Length < 3)
                return;
            LinearRing judged = new([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]);
            Assert.Equal(judged.IsSimple, PolygonValidity.FlawsOf(ring, 1).IsEmpty);
        });

    [Fact]
    public void Fifty_thousand_points_are_judged_with_one_flaw_at_the_far_side()
    {
        ImmutableArray<Point> ring = Wave(50_000);
        Assert.Empty(PolygonValidity.FlawsOf(ring, 3));
        ImmutableArray<Point> dented = ring.SetItem(25_000, new Point(0, -10));
        Assert.NotEmpty(PolygonValidity.FlawsOf(dented.SetItem(12_500, new Point(200_000, 200_000)), 3));
    }

    [Fact]
    public void Crossings_a_kilometer_wide_are_exact()
    {
        const long far = 1_000_000_000;
        ImmutableArray<Point> ring = [new(-far, -far), new(far, far), new(far, far - 1), new(-far, -far + 1)];
        Assert.Equal(RingFlawKind.Crossing, Assert.Single(PolygonValidity.FlawsOf(ring, 1)).Kind);
    }

    internal static ImmutableArray<Point> Ring(string text) =>
        [.. text.Split(',').Select(pair => pair.Trim().Split(' ')).Select(pair => new Point(Number(pair[0]), Number(pair[1])))];

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);

    private static ImmutableArray<Point> WithoutRepeats(Point[] points)
    {
        List<Point> ring = [.. points.Where((point, i) => point != points[(i + 1) % points.Length])];
        return [.. ring];
    }

    /// <summary>A closed wavy band: along and back again.</summary>
    private static ImmutableArray<Point> Wave(int count) =>
    [
        .. Enumerable.Range(0, count / 2).Select(i => new Point(i * 100, i % 2 * 5_000)),
        .. Enumerable.Range(0, count / 2).Select(i => new Point((count / 2 - i) * 100, 10_000 + i % 2 * 5_000)),
    ];
}
