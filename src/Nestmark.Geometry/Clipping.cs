using System.Collections.Immutable;
using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using NetTopologySuite.Index.IntervalRTree;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Polygonize;
using NetTopologySuite.Operation.Valid;
using Nts = NetTopologySuite.Geometries.Geometry;

namespace Nestmark.Geometry;

/// <summary>Union, intersection and difference of polygons, in whole micrometers in and out.</summary>
/// <remarks>
/// Method: NetTopologySuite's overlay with snap rounding on the micrometer grid, so results are always simple.
/// A boundary may shift by up to 0.71 micrometers where two lines cross. Rings handed in must not cross themselves.
/// Results are sorted by their lowest point in x, then y; outer rings start there.
/// </remarks>
public static class Clipping
{
    private static readonly PrecisionModel WholeMicrometers = new(1);

    /// <summary>The geometry factory of the project: overlay NG, floating coordinates in micrometers.</summary>
    internal static GeometryFactory Factory { get; } = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, new PrecisionModel(), 0, GeometryOverlay.NG, new CoordinateEqualityComparer())
        .CreateGeometryFactory();

    /// <summary>Everything covered by at least one polygon.</summary>
    /// <param name="polygons">Any number; none gives none.</param>
    public static ImmutableArray<Polygon> Union(IEnumerable<Polygon> polygons) => Union(polygons.Select(polygon => (Nts)ToNts(polygon)));

    /// <summary>What two polygons both cover; pieces of no area are left out.</summary>
    public static ImmutableArray<Polygon> Intersection(Polygon left, Polygon right) => Overlay(left, right, SpatialFunction.Intersection);

    /// <summary>What <paramref name="left"/> covers and <paramref name="right"/> does not.</summary>
    public static ImmutableArray<Polygon> Difference(Polygon left, Polygon right) => Overlay(left, right, SpatialFunction.Difference);

    /// <summary>The area that two polygons both cover, in square millimeters.</summary>
    public static double OverlapSquareMillimeters(Polygon left, Polygon right) => TotalSquareMillimeters(Intersection(left, right));

    /// <summary>The sum of the areas, in square millimeters.</summary>
    public static double TotalSquareMillimeters(ImmutableArray<Polygon> polygons) => polygons.Sum(polygon => polygon.AreaSquareMillimeters);

    /// <summary>Whether every point of <paramref name="inner"/> lies in <paramref name="outer"/>, touching included; exact.</summary>
    public static bool Covers(Polygon outer, Polygon inner) => ToNts(outer).Covers(ToNts(inner));

    /// <summary>Whether no ring of the polygon crosses or touches itself or another; exact.</summary>
    public static bool IsSimple(Polygon polygon) => new IsValidOp(ToNts(polygon)).IsValid;

    /// <summary>The part of a polygon on or above the x axis.</summary>
    public static ImmutableArray<Polygon> AboveXAxis(Polygon polygon)
    {
        Box bounds = polygon.Bounds;
        if (bounds.MinY >= 0)
            return [polygon];
        if (bounds.MaxY <= 0)
            return [];
        Polygon upper = Polygon.Of(
            [new(bounds.MinX - 1, 0), new(bounds.MaxX + 1, 0), new(bounds.MaxX + 1, bounds.MaxY + 1), new(bounds.MinX - 1, bounds.MaxY + 1)]);
        return Intersection(polygon, upper);
    }

    /// <summary>The region that a ring runs around more often counter-clockwise than clockwise; folds of the ring are cut away.</summary>
    /// <param name="ring">Any closed ring, first point not repeated; it may cross itself. Micrometers, not yet whole.</param>
    public static ImmutableArray<Polygon> PositiveWinding(IReadOnlyList<(double XMicrometers, double YMicrometers)> ring)
    {
        ImmutableArray<Point> rounded = [.. ring.Select(point => Rounded(new Coordinate(point.XMicrometers, point.YMicrometers)))];
        if (Polygon.TwiceSignedArea(rounded.AsSpan()) > 0 && PolygonValidity.FlawsOf(rounded, 1).IsEmpty)
            return [Polygon.Of(rounded)];
        Coordinate[] coordinates = [.. ring.Append(ring[0]).Select(point => new Coordinate(point.XMicrometers, point.YMicrometers))];
        Nts noded = UnaryUnionNG.Union(Factory.CreateLineString(coordinates), WholeMicrometers);
        Polygonizer polygonizer = new();
        polygonizer.Add(noded);
        SortedPackedIntervalRTree<int> segmentsByY = SegmentsByY(coordinates);
        return Union(polygonizer.GetPolygons().Where(face => WindingAround(face.InteriorPoint.Coordinate, coordinates, segmentsByY) > 0));
    }

    /// <summary>A polygon as NetTopologySuite has it.</summary>
    internal static NetTopologySuite.Geometries.Polygon ToNts(Polygon polygon) =>
        Factory.CreatePolygon(ToRing(polygon.Outer), [.. polygon.Holes.Select(ToRing)]);

    /// <summary>The polygons of a NetTopologySuite geometry, rounded to whole micrometers and sorted; rings of no area are dropped.</summary>
    internal static ImmutableArray<Polygon> FromNts(Nts geometry)
    {
        List<Polygon> polygons = [];
        for (int i = 0; i < geometry.NumGeometries; i++)
        {
            if (geometry.GetGeometryN(i) is NetTopologySuite.Geometries.Polygon { IsEmpty: false } part && FromRing(part.ExteriorRing, 1) is [_, ..] outer)
                polygons.Add(Polygon.WithHoles(outer, part.InteriorRings.Select(ring => FromRing(ring, -1)).Where(hole => hole.Count > 0)));
        }
        return [.. polygons.OrderBy(polygon => polygon.Outer[0]).ThenBy(polygon => polygon.TwiceArea)];
    }

    /// <summary>A geometry brought onto the micrometer grid without crossings.</summary>
    internal static ImmutableArray<Polygon> OnGrid(Nts geometry) => Union([geometry]);

    private static ImmutableArray<Polygon> Union(IEnumerable<Nts> geometries)
    {
        Nts[] all = [.. geometries];
        return all.Length == 0 ? [] : FromNts(UnaryUnionNG.Union(all, WholeMicrometers));
    }

    private static ImmutableArray<Polygon> Overlay(Polygon left, Polygon right, SpatialFunction function) =>
        FromNts(OverlayNG.Overlay(ToNts(left), ToNts(right), function, WholeMicrometers));

    private static LinearRing ToRing(ImmutableArray<Point> points) =>
        Factory.CreateLinearRing([.. points.Append(points[0]).Select(point => new Coordinate(point.X, point.Y))]);

    /// <summary>The ring from its lowest point in x, then y; <paramref name="winding"/> is 1 for counter-clockwise, -1 for clockwise.</summary>
    private static List<Point> FromRing(LineString ring, int winding)
    {
        List<Point> points = [.. ring.Coordinates.SkipLast(1).Select(Rounded)];
        int actual = Int128.Sign(Polygon.TwiceSignedArea(points.ToArray()));
        if (actual == 0)
            return [];
        if (actual != winding)
            points.Reverse();
        int first = points.IndexOf(points.Min());
        return [.. points.Skip(first), .. points.Take(first)];
    }

    private static Point Rounded(Coordinate coordinate) => new(
        (long)Math.Round(coordinate.X, MidpointRounding.AwayFromZero), (long)Math.Round(coordinate.Y, MidpointRounding.AwayFromZero));

    private static SortedPackedIntervalRTree<int> SegmentsByY(Coordinate[] ring)
    {
        SortedPackedIntervalRTree<int> tree = new();
        for (int i = 0; i + 1 < ring.Length; i++)
            tree.Insert(Math.Min(ring[i].Y, ring[i + 1].Y), Math.Max(ring[i].Y, ring[i + 1].Y), i);
        return tree;
    }

    private static int WindingAround(Coordinate place, Coordinate[] ring, SortedPackedIntervalRTree<int> segmentsByY)
    {
        WindingCounter counter = new(place, ring);
        segmentsByY.Query(place.Y, place.Y, counter);
        return counter.Count;
    }

    /// <summary>Counts how often the ring crosses the ray from a place to the right: upward 1, downward -1.</summary>
    private sealed class WindingCounter(Coordinate place, Coordinate[] ring) : NetTopologySuite.Index.IItemVisitor<int>
    {
        public int Count { get; private set; }

        public void VisitItem(int item)
        {
            Coordinate start = ring[item];
            Coordinate end = ring[item + 1];
            bool up = start.Y <= place.Y && end.Y > place.Y;
            bool down = end.Y <= place.Y && start.Y > place.Y;
            if (!up && !down)
                return;
            double side = (end.X - start.X) * (place.Y - start.Y) - (place.X - start.X) * (end.Y - start.Y);
            if (up && side > 0)
                Count++;
            else if (down && side < 0)
                Count--;
        }
    }
}
