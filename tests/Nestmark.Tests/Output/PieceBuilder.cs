using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Point = Nestmark.Geometry.Point;
using Polygon = Nestmark.Geometry.Polygon;

namespace Nestmark.Tests.Output;

/// <summary>Makes pieces by hand for the output tests. All shapes are invented.</summary>
internal static class PieceBuilder
{
    /// <summary>A piece from its cutting line, "x y, x y, …" in millimeters; the seam line lies 15 mm inside.</summary>
    public static Piece Free(string name, string size, CutQuantity cut, string outline, string notches = "") =>
        Make(name, size, cut, PointsOf(outline), null, PointsOf(notches));

    /// <summary>A half piece whose fold edge lies on y = 0, from its lowest-left point along x.</summary>
    public static Piece OnFold(string name, string size, string outline, string notches = "")
    {
        ImmutableArray<Point> points = PointsOf(outline);
        Point[] onFold = [.. points.Where(point => point.Y == 0).Order()];
        return Make(name, size, new CutQuantity(1, CutKind.OnFold), points, new Segment(onFold[0], onFold[^1]), PointsOf(notches));
    }

    /// <summary>The whole piece that a half opens to.</summary>
    public static Piece Opened(Piece half)
    {
        Point[] upper = [.. half.CuttingLine.Outer];
        Point[] whole = [.. Whole(upper)];
        Piece piece = Make(half.Name, half.Size, half.Cut, [.. whole], null, [.. half.Notches.Select(notch => notch.OnCuttingLine)]);
        return piece with { CenterLine = half.FoldEdge, Lines = half.Lines, Marks = half.Marks };
    }

    /// <summary>Points on a cubic curve, both ends included, as outline text.</summary>
    public static string Curve(double[] xy)
    {
        IEnumerable<string> points = Enumerable.Range(0, 13).Select(i =>
        {
            double t = i / 12.0;
            double u = 1 - t;
            double At(int k) => u * u * u * xy[k] + 3 * u * u * t * xy[k + 2] + 3 * u * t * t * xy[k + 4] + t * t * t * xy[k + 6];
            return FormattableString.Invariant($"{At(0):0.###} {At(1):0.###}");
        });
        return string.Join(", ", points);
    }

    private static Piece Make(
        string name, string size, CutQuantity cut, ImmutableArray<Point> outline, Segment? fold, ImmutableArray<Point> notches)
    {
        Polygon cutting = Polygon.Of(outline);
        Polygon seam = Polygon.Of(SeamOf(cutting, fold));
        Box box = cutting.Bounds;
        long middle = fold is null ? (box.MinY + box.MaxY) / 2 : box.MaxY / 3;
        return new Piece
        {
            Name = name,
            Size = size,
            Cut = cut,
            SeamLine = seam,
            CuttingLine = cutting,
            Grainline = new Segment(new Point(box.MinX + box.Width / 5, middle), new Point(box.MaxX - box.Width / 4, middle)),
            FoldEdge = fold,
            CenterLine = null,
            Corners = [],
            Edges = [],
            Notches = [.. notches.Select(at => new Notch("", NearestOn(seam, at), at))],
            Lines = [new PieceLine("dart", [new Point(box.MinX + 40_000, box.MaxY - 20_000), new Point(box.MinX + 90_000, middle)])],
            Marks = [new PieceMark("button", new Point(box.MaxX - 60_000, (middle + box.MinY + 30_000) / 2))],
            Grain = GrainRule.Along,
            Tilt = null,
        };
    }

    private static IEnumerable<Point> SeamOf(Polygon cutting, Segment? fold)
    {
        NetTopologySuite.Geometries.Geometry shape = Ring(fold is null ? cutting.Outer : Whole(cutting.Outer)).Buffer(-15_000);
        if (fold is not null)
            shape = shape.Intersection(Ring([new(-10_000_000, 0), new(10_000_000, 0), new(10_000_000, 10_000_000), new(-10_000_000, 10_000_000)]));
        return shape.Coordinates.SkipLast(1).Select(at => new Point((long)Math.Round(at.X), (long)Math.Round(at.Y)));
    }

    private static IEnumerable<Point> Whole(IReadOnlyList<Point> half)
    {
        // The fold edge runs between the two points on y = 0; the rest is walked once up and once down.
        int start = Enumerable.Range(0, half.Count).First(i => half[i].Y == 0 && half[(i + 1) % half.Count].Y != 0);
        Point[] upper = [.. Enumerable.Range(0, half.Count).Select(i => half[(start + i) % half.Count]).Where((point, i) => i == 0 || point.Y != 0)];
        Point last = half.Where(point => point.Y == 0).OrderBy(point => point.X).First();
        return [.. upper, last, .. upper.Skip(1).Reverse().Select(point => new Point(point.X, -point.Y))];
    }

    private static NetTopologySuite.Geometries.Polygon Ring(IEnumerable<Point> points)
    {
        Coordinate[] ring = [.. points.Select(point => new Coordinate(point.X, point.Y))];
        return new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
    }

    private static Point NearestOn(Polygon seam, Point at) => seam.Outer.MinBy(point => point.DistanceTo(at).Micrometers);

    private static ImmutableArray<Point> PointsOf(string text) =>
    [
        .. text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(pair =>
        {
            double[] xy = [.. pair.Split(' ').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];
            return Point.FromMillimeters(xy[0], xy[1]);
        }),
    ];
}
