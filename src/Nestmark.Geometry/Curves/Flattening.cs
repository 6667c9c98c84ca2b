using System.Collections.Immutable;

namespace Nestmark.Geometry.Curves;

/// <summary>Turns drawn segments into whole-micrometer points within <see cref="ToleranceMillimeters"/> of the drawing.</summary>
public static class Flattening
{
    /// <summary>Largest distance between the drawing and its flattened form, rounding included.</summary>
    public const double ToleranceMillimeters = 0.05;

    private const double WorkingToleranceMillimeters = 0.049;

    /// <summary>
    /// A closed outline, outward-safe: the polygon contains the drawn shape, but for the rounding of each point to a micrometer.
    /// Where the drawing bulges outward the polygon runs through the points where tangents meet; where it bulges inward, along chords.
    /// </summary>
    /// <param name="path">Segments head to tail, every one <see cref="CurveSegment.IsUsable"/>; a gap at the end is closed by a straight line.</param>
    /// <returns>Vertices in drawing order, first not repeated. Joints where segments meet; a single closed curve has none.</returns>
    /// <exception cref="ArgumentException">A segment is not usable.</exception>
    public static ImmutableArray<OutlineVertex> Closed(IReadOnlyList<CurveSegment> path)
    {
        TangentTurns outward = SignedArea(path) >= 0 ? TangentTurns.Left : TangentTurns.Right;
        if (path is [ArcSegment single] && single.Start == single.End)
            return [.. single.PointsBetween(outward, WorkingToleranceMillimeters).Select(InsideCurve)];
        List<OutlineVertex> vertices = [];
        foreach (CurveSegment segment in path)
        {
            Add(vertices, new OutlineVertex(segment.Start.Rounded(), VertexKind.Joint));
            foreach (CurvePoint point in segment.PointsBetween(outward, WorkingToleranceMillimeters))
                Add(vertices, InsideCurve(point));
        }
        if (path.Count > 0)
            Add(vertices, new OutlineVertex(path[^1].End.Rounded(), VertexKind.Joint));
        if (vertices.Count > 1 && vertices[^1].Point == vertices[0].Point)
            vertices.RemoveAt(vertices.Count - 1);
        return [.. vertices];
    }

    /// <summary>An open line, through points of the drawing; first and last point kept.</summary>
    /// <param name="path">Segments head to tail, every one <see cref="CurveSegment.IsUsable"/>.</param>
    /// <exception cref="ArgumentException">A segment is not usable.</exception>
    public static ImmutableArray<Point> Open(IReadOnlyList<CurveSegment> path)
    {
        List<Point> points = [];
        foreach (CurvePoint point in Chords(path))
        {
            Point rounded = point.Rounded();
            if (points.Count == 0 || points[^1] != rounded)
                points.Add(rounded);
        }
        return [.. points];
    }

    private static void Add(List<OutlineVertex> vertices, OutlineVertex vertex)
    {
        if (vertices.Count == 0 || vertices[^1].Point != vertex.Point)
            vertices.Add(vertex);
        else if (vertex.Kind == VertexKind.Joint)
            vertices[^1] = vertex;
    }

    private static OutlineVertex InsideCurve(CurvePoint point) => new(point.Rounded(), VertexKind.Curve);

    private static IEnumerable<CurvePoint> Chords(IReadOnlyList<CurveSegment> path)
    {
        foreach (CurveSegment segment in path)
        {
            yield return segment.Start;
            foreach (CurvePoint point in segment.PointsBetween(TangentTurns.None, WorkingToleranceMillimeters))
                yield return point;
        }
        if (path.Count > 0)
            yield return path[^1].End;
    }

    private static double SignedArea(IReadOnlyList<CurveSegment> path)
    {
        double twice = 0;
        CurvePoint? first = null;
        CurvePoint before = default;
        foreach (CurvePoint point in Chords(path))
        {
            first ??= point;
            twice += CurvePoint.Cross(before - first.Value, point - first.Value) * (point == first ? 0 : 1);
            before = point;
        }
        return twice / 2;
    }
}
