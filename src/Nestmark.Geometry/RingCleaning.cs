using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>Takes out of a drawn ring what says nothing: repeated vertices, spikes without width, vertices on straight runs.</summary>
/// <remarks>Bounds: references/formats.md 9 (duplicate or near vertices, spikes).</remarks>
public static class RingCleaning
{
    private const long MergeMicrometers = 1;
    private const double StraightMicrometers = 5;
    private const double SpikeTwiceAreaSquareMicrometers = 2 * 0.1e6;
    private const double SpikeSineRatio = 0.02;

    /// <summary>
    /// Merges neighbors within a micrometer, takes off spikes that turn back within about a degree and change the area by less than 0.1 mm²,
    /// and drops vertices within 5 micrometers of the line between their neighbors where the ring does not lose area by it.
    /// Marked vertices stay, spikes excepted; of two merged vertices the stronger kind stays.
    /// </summary>
    /// <param name="ring">Either way round, first vertex not repeated.</param>
    public static CleanedRing Clean(ImmutableArray<OutlineVertex> ring)
    {
        List<OutlineVertex> vertices = [];
        foreach (OutlineVertex vertex in ring)
            AddMerging(vertices, vertex);
        while (vertices.Count > 1 && IsNear(vertices[^1].Point, vertices[0].Point))
        {
            vertices[0] = Stronger(vertices[0], vertices[^1]);
            vertices.RemoveAt(vertices.Count - 1);
        }
        int merged = ring.Length - vertices.Count;
        List<Point> spikes = TakeOffSpikes(vertices);
        int before = vertices.Count;
        DropStraight(vertices);
        return new CleanedRing([.. vertices], merged, before - vertices.Count, [.. spikes]);
    }

    private static void AddMerging(List<OutlineVertex> vertices, OutlineVertex vertex)
    {
        if (vertices.Count > 0 && IsNear(vertices[^1].Point, vertex.Point))
            vertices[^1] = Stronger(vertices[^1], vertex);
        else
            vertices.Add(vertex);
    }

    private static bool IsNear(Point left, Point right) =>
        Math.Abs(left.X - right.X) <= MergeMicrometers && Math.Abs(left.Y - right.Y) <= MergeMicrometers;

    private static OutlineVertex Stronger(OutlineVertex kept, OutlineVertex other)
    {
        bool isStronger = other.Kind == VertexKind.Marked || kept.Kind == VertexKind.Curve;
        return isStronger ? kept with { Kind = other.Kind } : kept;
    }

    private static List<Point> TakeOffSpikes(List<OutlineVertex> vertices)
    {
        List<Point> tips = [];
        int i = 0;
        while (i < vertices.Count && vertices.Count > 3)
        {
            int previous = (i + vertices.Count - 1) % vertices.Count;
            int next = (i + 1) % vertices.Count;
            if (!IsSpike(vertices[previous].Point, vertices[i].Point, vertices[next].Point))
            {
                i++;
                continue;
            }
            tips.Add(vertices[i].Point);
            vertices.RemoveAt(i);
            // What was beside the tip may now be a repeated vertex or the tip of what is left of the spike.
            i = Math.Max(0, i - 1);
            int after = (i + 1) % vertices.Count;
            if (IsNear(vertices[i].Point, vertices[after].Point))
                vertices.RemoveAt(after);
            i = Math.Max(0, Math.Min(i, vertices.Count - 1) - 1);
        }
        return tips;
    }

    private static bool IsSpike(Point before, Point tip, Point after)
    {
        Point rising = tip - before;
        Point falling = after - tip;
        if (Orientation.Dot(rising, falling) >= 0)
            return false;
        double twiceArea = Math.Abs((double)Orientation.Cross(rising, falling));
        return twiceArea < SpikeTwiceAreaSquareMicrometers && twiceArea < SpikeSineRatio * rising.NormMicrometers * falling.NormMicrometers;
    }

    private static void DropStraight(List<OutlineVertex> vertices)
    {
        Point[] points = [.. vertices.Select(vertex => vertex.Point)];
        int inside = Polygon.TwiceSignedArea(points) >= 0 ? 1 : -1;
        List<OutlineVertex> kept = [];
        int runStart = 0;
        for (int i = 0; i < vertices.Count; i++)
        {
            Point from = kept.Count == 0 ? points[^1] : kept[^1].Point;
            Point to = points[(i + 1) % points.Length];
            bool canDrop = vertices[i].Kind != VertexKind.Marked && i > 0 && i < vertices.Count - 1 && i - runStart < 64
                && Enumerable.Range(runStart, i - runStart + 1).All(index => IsStraight(from, points[index], to, inside));
            if (canDrop)
                continue;
            kept.Add(vertices[i]);
            runStart = i + 1;
        }
        if (kept.Count < 3)
            return;
        vertices.Clear();
        vertices.AddRange(kept);
    }

    private static bool IsStraight(Point from, Point point, Point to, int inside)
    {
        Point run = to - from;
        Point offset = point - from;
        double side = inside * (double)Orientation.Cross(run, offset);
        long along = Orientation.Dot(run, offset);
        return side >= 0 && side <= StraightMicrometers * run.NormMicrometers && along > 0 && Orientation.Dot(run, to - point) > 0;
    }
}
