using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Tests.Geometry;

public sealed class PolygonValidityCleaningTests
{
    [Theory]
    [InlineData("0 0, 40000 0, 40001 0, 40000 30000", "0 0, 40000 0, 40000 30000", 1, 0, 0)]
    [InlineData("0 0, 20000 0, 40000 0, 40000 30000", "0 0, 40000 0, 40000 30000", 0, 1, 0)]
    [InlineData("0 0, 20000 4, 40000 0, 40000 30000", "0 0, 40000 0, 40000 30000", 0, 1, 0)]
    [InlineData("0 0, 20000 -4, 40000 0, 40000 30000", "0 0, 20000 -4, 40000 0, 40000 30000", 0, 0, 0)]
    [InlineData("0 0, 40000 0, 40000 10000, 50000 10000, 40000 10010, 40000 30000", "0 0, 40000 0, 40000 30000", 0, 2, 1)]
    [InlineData("0 0, 40000 0, 40000 10000, 50000 10000, 40000 10000, 40000 30000", "0 0, 40000 0, 40000 30000", 0, 1, 1)]
    public void What_says_nothing_is_taken_out_and_counted(string ring, string expected, int merged, int straight, int spikes)
    {
        CleanedRing cleaned = RingCleaning.Clean([.. PolygonValidityTests.Ring(ring).Select(point => new OutlineVertex(point, VertexKind.Joint))]);
        Assert.Equal(PolygonValidityTests.Ring(expected), cleaned.Vertices.Select(vertex => vertex.Point));
        Assert.Equal((merged, straight, spikes), (cleaned.MergedCount, cleaned.StraightCount, cleaned.Spikes.Length));
    }

    [Fact]
    public void Marked_corner_on_a_straight_run_stays()
    {
        ImmutableArray<OutlineVertex> ring =
            [new(new(0, 0), VertexKind.Joint), new(new(20000, 0), VertexKind.Marked), new(new(40000, 0), VertexKind.Joint), new(new(40000, 30000), VertexKind.Joint)];
        Assert.Equal(ring.AsEnumerable(), RingCleaning.Clean(ring).Vertices);
    }

    /// <summary>The size of what is left: a circle of radius 100 mm takes 157 tangents within 0.02 mm, one point beyond and one on it for each.</summary>
    [Fact]
    public void Dense_circle_is_thinned_within_the_distance()
    {
        ImmutableArray<OutlineVertex> circle = [.. Enumerable.Range(0, 50_000).Select(i => OnCircle(i / 50_000.0))];
        ImmutableArray<OutlineVertex> thin = RingThinning.Thin(circle, Length.FromMillimeters(0.02));
        Assert.InRange(thin.Length, 60, 420);
        Assert.All(Enumerable.Range(0, thin.Length), i =>
        {
            Point middle = thin[i].Point + thin[(i + 1) % thin.Length].Point;
            Assert.InRange(middle.NormMicrometers / 2, 99_999, 100_020);
        });
    }

    private static OutlineVertex OnCircle(double ratio)
    {
        double radians = ratio * 2 * Math.PI;
        return new OutlineVertex(Point.FromMillimeters(100 * Angle.Cos(radians), 100 * Angle.Sin(radians)), VertexKind.Joint);
    }
}
