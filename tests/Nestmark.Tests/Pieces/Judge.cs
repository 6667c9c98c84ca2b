using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.OverlayNG;

namespace Nestmark.Tests.Pieces;

/// <summary>NetTopologySuite as a judge of shapes, apart from the project's own use of it. Micrometers.</summary>
internal static class Judge
{
    private static readonly GeometryFactory Factory = new();

    public static Polygon ToNts(Nestmark.Geometry.Polygon polygon) =>
        Factory.CreatePolygon(Ring(polygon.Outer), [.. polygon.Holes.Select(hole => Ring(hole))]);

    /// <summary>Simple, and holding the seam line but for a rounding of 2 micrometers.</summary>
    public static void AssertAround(Nestmark.Geometry.Polygon cuttingLine, Nestmark.Geometry.Polygon seamLine)
    {
        Polygon cut = ToNts(cuttingLine);
        Assert.True(cut.IsValid, "The cutting line crosses itself.");
        NetTopologySuite.Geometries.Geometry outside = OverlayNGRobust.Overlay(ToNts(seamLine), cut, NetTopologySuite.Operation.Overlay.SpatialFunction.Difference);
        double farthest = outside.Coordinates.Select(place => cut.Distance(Factory.CreatePoint(place))).DefaultIfEmpty(0).Max();
        Assert.True(farthest <= 2, $"The seam line leaves the cutting line by {farthest} micrometers.");
    }

    /// <summary>Area of the symmetric difference in square millimeters.</summary>
    public static double DifferenceSquareMillimeters(NetTopologySuite.Geometries.Geometry left, NetTopologySuite.Geometries.Geometry right) =>
        OverlayNGRobust.Overlay(left, right, NetTopologySuite.Operation.Overlay.SpatialFunction.SymDifference).Area / 1e6;

    /// <summary>The polygon grown by a width with mitred corners.</summary>
    public static NetTopologySuite.Geometries.Geometry Mitred(Nestmark.Geometry.Polygon polygon, double widthMillimeters, double pointLimitRatio) =>
        BufferOp.Buffer(ToNts(polygon), widthMillimeters * 1000, new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, pointLimitRatio) { SimplifyFactor = 0 });

    /// <summary>The polygon grown by a width with round corners, 0.003 mm inside at most at a width of 10 mm.</summary>
    public static NetTopologySuite.Geometries.Geometry Rounded(Nestmark.Geometry.Polygon polygon, double widthMillimeters) =>
        BufferOp.Buffer(ToNts(polygon), widthMillimeters * 1000, new BufferParameters(64) { SimplifyFactor = 0 });

    /// <summary>How far a place lies from the outer ring, micrometers.</summary>
    public static double DistanceToOutline(Nestmark.Geometry.Polygon polygon, double x, double y)
    {
        PointPairDistance distance = new();
        DistanceToPoint.ComputeDistance((NetTopologySuite.Geometries.Geometry)ToNts(polygon).ExteriorRing, new Coordinate(x, y), distance);
        return distance.Distance;
    }

    /// <summary>Whether a place lies inside, or outside by no more than a slack in micrometers.</summary>
    public static bool Holds(Polygon polygon, double x, double y, double slackMicrometers) =>
        polygon.Distance(Factory.CreatePoint(new Coordinate(x, y))) <= slackMicrometers;

    private static LinearRing Ring(IReadOnlyList<Nestmark.Geometry.Point> points) =>
        Factory.CreateLinearRing([.. points.Append(points[0]).Select(point => new Coordinate(point.X, point.Y))]);
}
