using System.Collections.Immutable;
using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Tests.Geometry.NoFit;

/// <summary>
/// Against the 64 no-fit polygons of the set albano in the ESICUP data (CC0), datasets/albano-nfp.json.
/// The published coordinates are rounded to whole units where edges cross, so crossing corners may differ by half a unit.
/// </summary>
public sealed class PublishedNoFitTests
{
    private const int MicrometersPerUnit = 1000;

    public static TheoryData<int> Pairs => [.. Enumerable.Range(0, 64)];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void No_fit_polygon_matches_the_published_one(int index)
    {
        (Polygon still, Polygon moving, ImmutableArray<Point> published) = Load(index);
        NoFitRegion region = NoFitPolygon.Of(still, moving);
        ImmutableArray<Point> outer = region.Rings.MaxBy(ring => Polygon.TwiceSignedArea(ring.AsSpan()));

        Assert.All(outer, point => Assert.InRange(Distance(point, published), 0, Tolerance));
        Assert.All(published, point => Assert.InRange(Distance(point, outer), 0, Tolerance));
    }

    // Half a unit of rounding in x and in y: sqrt(0.5) units.
    private const double Tolerance = 0.7072 * MicrometersPerUnit;

    private static double Distance(Point point, ImmutableArray<Point> ring)
    {
        double best = double.MaxValue;
        for (int i = 0; i < ring.Length; i++)
        {
            Point start = ring[i];
            Point along = ring[(i + 1) % ring.Length] - start;
            double length = (double)along.X * along.X + (double)along.Y * along.Y;
            double part = Math.Clamp(((point.X - start.X) * (double)along.X + (point.Y - start.Y) * (double)along.Y) / length, 0, 1);
            double x = start.X + part * along.X - point.X;
            double y = start.Y + part * along.Y - point.Y;
            best = Math.Min(best, Math.Sqrt(x * x + y * y));
        }
        return best;
    }

    private static (Polygon Still, Polygon Moving, ImmutableArray<Point> Published) Load(int index)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Fixtures.Datasets, "albano-nfp.json")));
        JsonElement pairs = document.RootElement.GetProperty("pairs");
        Assert.Equal(64, pairs.GetArrayLength());
        JsonElement pair = pairs[index];
        return (Polygon.Of(Ring(pair, "static")), Polygon.Of(Ring(pair, "orbiting")), Ring(pair, "noFitPolygon"));
    }

    private static ImmutableArray<Point> Ring(JsonElement pair, string name) =>
        [.. pair.GetProperty(name).EnumerateArray().Select(point => new Point(Units(point[0]), Units(point[1])))];

    private static long Units(JsonElement number) => (long)Math.Round(number.GetDouble() * MicrometersPerUnit);
}
