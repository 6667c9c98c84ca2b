using System.Globalization;
using CsCheck;
using Nestmark.Geometry;
using NetTopologySuite.Geometries;
using Point = Nestmark.Geometry.Point;
using Polygon = Nestmark.Geometry.Polygon;

namespace Nestmark.Tests;

/// <summary>Shapes as text and at random, and the way to the judging library.</summary>
internal static class Shapes
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>Random star-shaped polygons of 3 to 12 corners, 5 to 60 mm around a center, convex or not.</summary>
    public static Gen<Polygon> Star { get; } =
        Gen.Select(Gen.Int[3, 12], Gen.Double[5, 60].Array[12], Gen.Double[0, 0.9].Array[12])
            .Select((count, radii, shifts) => StarOf(count, radii, shifts));

    /// <summary>Two such polygons and places, as parts of the bounds of their no-fit polygon, a few of them outside.</summary>
    public static Gen<(Polygon Still, Polygon Moving, double[] Ratios)> StarsAndPlaces { get; } =
        from still in Star
        from moving in Star
        from ratios in Gen.Double[-0.05, 1.05].Array[200]
        select (still, moving, ratios);

    /// <summary>A polygon from "x y, x y, …" in millimeters.</summary>
    public static Polygon Of(string text) => Polygon.Of(text.Split(',').Select(ToPoint));

    /// <summary>A point in millimeters.</summary>
    public static Point At(double xMillimeters, double yMillimeters) => Point.FromMillimeters(xMillimeters, yMillimeters);

    /// <summary>The outline in millimeters, as <see cref="Of"/> reads it.</summary>
    public static string Text(Polygon polygon) =>
        string.Join(", ", polygon.Outer.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.XMillimeters} {point.YMillimeters}")));

    /// <summary>The same polygon for NetTopologySuite, in micrometers.</summary>
    public static NetTopologySuite.Geometries.Polygon ToNts(Polygon polygon) =>
        Factory.CreatePolygon(Ring(polygon.Outer), [.. polygon.Holes.Select(hole => Ring(hole))]);

    private static LinearRing Ring(IEnumerable<Point> points)
    {
        List<Coordinate> coordinates = [.. points.Select(point => new Coordinate(point.X, point.Y))];
        coordinates.Add(coordinates[0].Copy());
        return Factory.CreateLinearRing([.. coordinates]);
    }

    private static Polygon StarOf(int count, double[] radii, double[] shifts) => Polygon.Of(Enumerable.Range(0, count).Select(i =>
    {
        Angle angle = Angle.FromDegrees((i + shifts[i]) * 360 / count);
        return Point.FromMillimeters(radii[i] * angle.CosineRatio, radii[i] * angle.SineRatio);
    }));

    private static Point ToPoint(string text)
    {
        string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return At(double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture));
    }
}
