using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>Whether the insides of two shapes meet; exact, touching does not count.</summary>
/// <remarks>
/// If no two edges cross properly, all contacts are at vertices. Each edge is then cut at the vertices that lie on it, and the middle of each
/// stretch tells: strictly inside the other shape, or along its edge with both insides on the same side, means overlap. Everything is done in half micrometers.
/// </remarks>
public static class InteriorOverlap
{
    /// <summary>Whether the insides of two polygons meet, the second one moved by a displacement.</summary>
    public static bool Of(Polygon first, Polygon second, Point displacement)
    {
        if (!first.Bounds.InteriorMeets(second.Bounds.Shifted(displacement)))
            return false;
        return Meet(DoubledRings(first, Point.Origin), DoubledRings(second, displacement));
    }

    /// <summary>As <see cref="Of"/> for two counter-clockwise rings.</summary>
    internal static bool OfRings(ImmutableArray<Point> first, ImmutableArray<Point> second, Point displacement) =>
        Meet([Doubled(first, Point.Origin)], [Doubled(second, displacement)]);

    private static bool Meet(Point[][] first, Point[][] second)
    {
        List<(Point Start, Point End)> firstEdges = Edges(first);
        List<(Point Start, Point End)> secondEdges = Edges(second);
        List<(Point Start, Point End)> firstParts = new(firstEdges.Count);
        List<(Point Start, Point End)> secondParts = new(secondEdges.Count);
        return CrossesOrCuts(firstEdges, secondEdges, firstParts)
            || CrossesOrCuts(secondEdges, firstEdges, secondParts)
            || firstParts.Any(part => IsWithin(part, second, secondEdges))
            || secondParts.Any(part => IsWithin(part, first, firstEdges));
    }

    /// <summary>Whether an edge crosses another properly; otherwise cuts the edges at the vertices lying on them.</summary>
    private static bool CrossesOrCuts(
        List<(Point Start, Point End)> edges, List<(Point Start, Point End)> others, List<(Point Start, Point End)> parts)
    {
        List<Point> cuts = [];
        foreach ((Point start, Point end) in edges)
        {
            cuts.Clear();
            Box box = Box.Around([start, end]);
            foreach ((Point otherStart, Point otherEnd) in others)
            {
                if (!box.Touches(Box.Around([otherStart, otherEnd])))
                    continue;
                int startSide = Orientation.Of(start, end, otherStart);
                int endSide = Orientation.Of(start, end, otherEnd);
                if (startSide * endSide < 0
                    && Orientation.Of(otherStart, otherEnd, start) * Orientation.Of(otherStart, otherEnd, end) < 0)
                {
                    return true;
                }
                if (startSide == 0 && otherStart != start && otherStart != end && PointLocation.IsOnSegment(start, end, otherStart))
                    cuts.Add(otherStart);
            }
            AddParts(start, end, cuts, parts);
        }
        return false;
    }

    private static void AddParts(Point start, Point end, List<Point> cuts, List<(Point Start, Point End)> parts)
    {
        Point from = start;
        if (cuts.Count > 1)
            cuts.Sort((left, right) => Orientation.Dot(left - start, end - start).CompareTo(Orientation.Dot(right - start, end - start)));
        foreach (Point cut in cuts)
        {
            if (cut != from)
                parts.Add((from, cut));
            from = cut;
        }
        parts.Add((from, end));
    }

    private static bool IsWithin((Point Start, Point End) part, Point[][] rings, List<(Point Start, Point End)> edges)
    {
        Point middle = new((part.Start.X + part.End.X) / 2, (part.Start.Y + part.End.Y) / 2);
        bool inside = false;
        foreach (Point[] ring in rings)
        {
            int location = PointLocation.InRing(ring, middle);
            if (location == 0)
                return RunsAlong(part, middle, edges);
            inside ^= location > 0;
        }
        return inside;
    }

    private static bool RunsAlong((Point Start, Point End) part, Point middle, List<(Point Start, Point End)> edges)
    {
        Point direction = part.End - part.Start;
        foreach ((Point start, Point end) in edges)
        {
            if (Orientation.Cross(direction, end - start) == 0
                && Orientation.Dot(direction, end - start) > 0
                && PointLocation.IsOnSegment(start, end, middle))
            {
                return true;
            }
        }
        return false;
    }

    private static Point[][] DoubledRings(Polygon polygon, Point displacement) =>
        [Doubled(polygon.Outer, displacement), .. polygon.Holes.Select(hole => Doubled(hole, displacement))];

    private static Point[] Doubled(ImmutableArray<Point> ring, Point displacement)
    {
        Point[] doubled = new Point[ring.Length];
        for (int i = 0; i < ring.Length; i++)
            doubled[i] = new Point(2 * (ring[i].X + displacement.X), 2 * (ring[i].Y + displacement.Y));
        return doubled;
    }

    private static List<(Point Start, Point End)> Edges(Point[][] rings)
    {
        List<(Point Start, Point End)> edges = [];
        foreach (Point[] ring in rings)
        {
            for (int i = 0; i < ring.Length; i++)
                edges.Add((ring[i], ring[i + 1 == ring.Length ? 0 : i + 1]));
        }
        return edges;
    }
}
