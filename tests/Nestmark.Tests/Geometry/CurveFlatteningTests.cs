using System.Collections.Immutable;
using CsCheck;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using NetTopologySuite.Geometries;
using Point = Nestmark.Geometry.Point;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Nestmark.Tests.Geometry;

/// <summary>Flattened outlines against dense samples of the exact curve, with NetTopologySuite as judge of inside and distance.</summary>
public sealed class CurveFlatteningTests
{
    private const double RoundingMillimeters = 0.001;

    /// <summary>800 samples of a circle of 1 m stand this far outside the chords between them: r(1 - cos(180°/800)).</summary>
    private const double SampleSagittaMillimeters = 0.0078;

    private static readonly Gen<CurvePoint> Points = Gen.Select(Gen.Double[-300, 300], Gen.Double[-300, 300], (x, y) => new CurvePoint(x, y));

    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    public void Circle_lies_inside_its_polygon_within_the_tolerance(double radius) => Check([ArcSegment.Circle(new(3, 4), radius)]);

    [Fact]
    public void Circle_has_no_joints() =>
        Assert.All(Flattening.Closed([ArcSegment.Circle(default, 50)]), vertex => Assert.Equal(VertexKind.Curve, vertex.Kind));

    // references/formats.md 2.6: at 0.05 mm a full circle takes 32, 100, 315 segments for r 10, 100, 1000.
    [Theory]
    [InlineData(10, 32)]
    [InlineData(100, 100)]
    [InlineData(1000, 315)]
    public void Circle_takes_no_more_points_than_it_must(double radius, int published) =>
        Assert.InRange(Flattening.Closed([ArcSegment.Circle(default, radius)]).Length, published, published * 1.03 + 1);

    [Fact]
    public void Clockwise_ellipse_is_outward_safe_too() =>
        Check([ArcSegment.Ellipse(default, 200, 60).Mapped(AffineMap.Scale(1, -1))]);

    [Fact]
    public void Hollow_side_runs_along_chords_and_keeps_the_shape_inside() => Check(
    [
        new StraightSegment(new(0, 0), new(100, 0)),
        new CubicSegment(new(100, 0), new(60, 40), new(60, 60), new(100, 100)),
        new StraightSegment(new(100, 100), new(0, 100)),
    ]);

    [Fact]
    public void Curve_that_changes_its_turning_is_split_at_the_inflection() => Check(
    [
        new CubicSegment(new(0, 0), new(100, -120), new(200, 120), new(300, 0)),
        new StraightSegment(new(300, 0), new(300, 200)),
        new StraightSegment(new(300, 200), new(0, 200)),
    ]);

    [Fact]
    public void Joints_stand_where_segments_meet_and_nowhere_else()
    {
        ImmutableArray<OutlineVertex> vertices = Flattening.Closed(
        [
            new StraightSegment(new(0, 0), new(100, 0)),
            CubicSegment.FromQuadratic(new(100, 0), new(140, 50), new(100, 100)),
            new StraightSegment(new(100, 100), new(0, 100)),
        ]);
        Point[] joints = [.. vertices.Where(vertex => vertex.Kind == VertexKind.Joint).Select(vertex => vertex.Point)];
        Assert.Equal([new(0, 0), new(100_000, 0), new(100_000, 100_000), new(0, 100_000)], joints);
    }

    [Fact]
    public void Random_convex_drops_and_bays_are_outward_safe() =>
        Gen.Select(Points, Points, Gen.Double[-1, 1], Gen.Double[0.05, 1]).Check(25, (first, second, bulge, reach) =>
        {
            CurvePoint along = second - first;
            if (along.NormMillimeters < 5)
                return;
            CurvePoint across = new(-along.YMillimeters, along.XMillimeters);
            CurvePoint startControl = first + along * (0.5 - 0.5 * reach) + across * bulge;
            CurvePoint endControl = second - along * (0.5 - 0.5 * reach) + across * bulge;
            Check(
            [
                new CubicSegment(first, startControl, endControl, second),
                new StraightSegment(second, second + across * 2),
                new StraightSegment(second + across * 2, first + across * 2),
            ]);
        });

    [Fact]
    public void Random_open_cubics_stay_within_the_tolerance() =>
        Gen.Select(Points, Points, Points, Points).Check(25, (a, b, c, d) =>
        {
            CubicSegment cubic = new(a, b, c, d);
            LineString line = Line(Flattening.Open([cubic]));
            for (int i = 0; i <= 400; i++)
                Assert.InRange(line.Distance(At(cubic.PointAt(i / 400.0))), 0, Flattening.ToleranceMillimeters);
        });

    [Fact]
    public void Cusp_and_collapsed_controls_are_flattened_without_trouble()
    {
        CubicSegment cusp = new(new(0, 0), new(100, 100), new(0, 100), new(100, 0));
        CubicSegment collapsed = new(new(0, 0), new(0, 0), new(80, 60), new(80, 60));
        CubicSegment doubled = new(new(0, 0), new(200, 0), new(-100, 0), new(100, 0));
        Assert.All([cusp, collapsed, doubled], cubic => Assert.InRange(Flattening.Open([cubic]).Length, 2, 400));
    }

    [Fact]
    public void Open_line_keeps_both_ends()
    {
        ImmutableArray<Point> points = Flattening.Open([CubicSegment.FromQuadratic(new(0, 0), new(50, 80), new(100, 0))]);
        Assert.Equal(new Point(0, 0), points[0]);
        Assert.Equal(new Point(100_000, 0), points[^1]);
    }

    private static void Check(IReadOnlyList<CurveSegment> path)
    {
        ImmutableArray<OutlineVertex> vertices = Flattening.Closed(path);
        Polygon polygon = new(new LinearRing([.. vertices.Append(vertices[0]).Select(vertex => new Coordinate(vertex.Point.XMillimeters, vertex.Point.YMillimeters))]));
        Assert.True(polygon.IsValid);
        foreach (CurveSegment segment in path)
        {
            for (int i = 0; i <= 400; i++)
            {
                var sample = At(segment.PointAt(i / 400.0));
                Assert.InRange(polygon.Distance(sample), 0, RoundingMillimeters);
                Assert.InRange(polygon.ExteriorRing.Distance(sample), 0, Flattening.ToleranceMillimeters);
            }
        }
        CheckNoVertexIsFar(path, vertices);
    }

    private static void CheckNoVertexIsFar(IReadOnlyList<CurveSegment> path, ImmutableArray<OutlineVertex> vertices)
    {
        CurvePoint[] samples = [.. path.SelectMany(segment => Enumerable.Range(0, 801).Select(i => segment.PointAt(i / 800.0)))];
        LineString exact = new([.. samples.Append(samples[0]).Select(sample => At(sample).Coordinate)]);
        foreach (OutlineVertex vertex in vertices)
            Assert.InRange(exact.Distance(At(new(vertex.Point.XMillimeters, vertex.Point.YMillimeters))), 0, Flattening.ToleranceMillimeters + RoundingMillimeters + SampleSagittaMillimeters);
    }

    private static LineString Line(ImmutableArray<Point> points) =>
        new([.. points.Select(point => new Coordinate(point.XMillimeters, point.YMillimeters))]);

    private static NetTopologySuite.Geometries.Point At(CurvePoint point) => new(point.XMillimeters, point.YMillimeters);
}
