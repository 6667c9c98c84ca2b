using System.Collections.Immutable;
using CsCheck;
using Nestmark.Geometry;

namespace Nestmark.Tests.Geometry;

/// <summary>Thinned rings, judged by NetTopologySuite.</summary>
public sealed class RingThinningTests
{
    private static readonly Length Within = Length.FromMillimeters(0.02);

    /// <summary>Waves round a circle of radius 150 mm, drawn with a pen that shakes by up to some micrometers; invented.</summary>
    private static readonly Gen<ImmutableArray<OutlineVertex>> Waves =
        Gen.Select(Gen.Int[0, 30], Gen.Int[2, 20], Gen.Int[0, 3], Gen.Int[-20, 20].Array[1500], (height, count, shake, pen) =>
            ImmutableArray.CreateRange(Enumerable.Range(0, pen.Length).Select(i =>
            {
                double radians = 2 * Math.PI * i / pen.Length;
                double radius = 150_000 + 1000 * height * Angle.Sin(count * radians) + shake * pen[i] / 20.0;
                Point place = new((long)(radius * Angle.Cos(radians)), (long)(radius * Angle.Sin(radians)));
                return new OutlineVertex(place, i % 500 == 7 ? VertexKind.Marked : VertexKind.Joint);
            })));

    [Fact]
    public void A_thinned_ring_holds_the_drawn_one_and_keeps_within_the_distance() => Waves.Check(40, drawn =>
    {
        ImmutableArray<OutlineVertex> thinned = RingThinning.Thin(drawn, Within);
        NetTopologySuite.Geometries.Polygon outline = Shapes.ToNts(Polygon.Of(thinned.Select(vertex => vertex.Point)));
        NetTopologySuite.Geometries.Polygon before = Shapes.ToNts(Polygon.Of(drawn.Select(vertex => vertex.Point)));
        Assert.True(outline.IsValid);
        Assert.True(outline.Covers(before), "Some of the inside is lost.");
        Assert.All(thinned, vertex => Assert.InRange(before.Distance(new NetTopologySuite.Geometries.Point(vertex.Point.X, vertex.Point.Y)), 0, 20));
        Assert.InRange(thinned.Length, 20, drawn.Length);
    });

    [Fact]
    public void Clockwise_rings_are_thinned_outward_too() => Waves.Check(20, drawn =>
    {
        ImmutableArray<OutlineVertex> thinned = RingThinning.Thin([.. drawn.Reverse()], Within);
        Point[] ring = [.. thinned.Select(vertex => vertex.Point)];
        Assert.True(Polygon.TwiceSignedArea(ring) < 0);
        Assert.True(Shapes.ToNts(Polygon.Of(ring)).Covers(Shapes.ToNts(Polygon.Of(drawn.Select(vertex => vertex.Point)))));
    });

    [Fact]
    public void Marked_vertices_stay_where_they_are() => Waves.Check(20, drawn => Assert.Equal(
        drawn.Where(vertex => vertex.Kind == VertexKind.Marked).Select(vertex => vertex.Point).Order(),
        RingThinning.Thin(drawn, Within).Where(vertex => vertex.Kind == VertexKind.Marked).Select(vertex => vertex.Point).Order()));

    [Fact]
    public void Corners_of_a_plain_shape_stay()
    {
        ImmutableArray<OutlineVertex> shape = [.. Shapes.Of("0 0, 400 0, 400 300, 200 100, 0 300").Outer.Select(point => new OutlineVertex(point, VertexKind.Joint))];
        Assert.Equal(shape.AsEnumerable(), RingThinning.Thin(shape, Within));
    }

    [Fact]
    public void A_distance_of_zero_is_the_callers_mistake() =>
        Assert.Throws<ArgumentException>(() => RingThinning.Thin([.. Enumerable.Repeat(new OutlineVertex(Point.Origin, VertexKind.Joint), 5)], Length.Zero));
}
