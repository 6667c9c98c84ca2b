namespace Nestmark.Geometry;

/// <summary>Fewer corners for an outline, never giving up any of its inside.</summary>
/// <remarks>
/// Two moves, the one that adds least area first: a reflex corner is cut across, and an edge between two convex corners is replaced by the
/// point where its neighbors meet. Each is taken only if it moves the outline by no more than the tolerance; moves add up to at most four times that.
/// </remarks>
public static class OutwardSimplification
{
    private const int FewestCorners = 4;

    /// <summary>A simple polygon that contains the given one; the given one itself when no corner can go.</summary>
    /// <param name="polygon">Simple; holes are kept as they are.</param>
    /// <param name="tolerance">Largest outward move of one step; above zero.</param>
    public static Polygon Of(Polygon polygon, Length tolerance)
    {
        List<Point> ring = [.. polygon.Outer];
        double limit = tolerance.Micrometers;
        bool changed = true;
        for (int pass = 0; changed && pass < 4; pass++)
        {
            changed = false;
            for (int i = 0; i < ring.Count && ring.Count > FewestCorners; i++)
                changed |= CutReflex(ring, i, limit) || MergeEdge(ring, i, limit);
        }
        Polygon simplified = Polygon.WithHoles(ring, polygon.Holes.Select(hole => (IEnumerable<Point>)hole));
        return IsSimple(simplified) ? simplified : polygon;
    }

    private static Point At(List<Point> ring, int i) => ring[(i % ring.Count + ring.Count) % ring.Count];

    private static bool CutReflex(List<Point> ring, int i, double limit)
    {
        Point before = At(ring, i - 1);
        Point after = At(ring, i + 1);
        if (Orientation.Of(before, ring[i], after) > 0 || DistanceFromLine(before, after, ring[i]) > limit)
            return false;
        ring.RemoveAt(i);
        return true;
    }

    /// <summary>Replaces the edge from i to i + 1 by the point where the edges before and after it meet.</summary>
    private static bool MergeEdge(List<Point> ring, int i, double limit)
    {
        Point before = At(ring, i - 1);
        Point start = At(ring, i);
        Point end = At(ring, i + 1);
        Point after = At(ring, i + 2);
        if (Orientation.Of(before, start, end) <= 0 || Orientation.Of(start, end, after) <= 0)
            return false;
        Point first = start - before;
        Point second = end - after;
        double cross = (double)first.X * second.Y - (double)first.Y * second.X;
        Point gap = end - start;
        double along = ((double)gap.X * second.Y - (double)gap.Y * second.X) / cross;
        if (cross >= 0 || along < 0)
            return false;
        Point meet = RoundedOutward(start.X + along * first.X, start.Y + along * first.Y, start, end);
        if (DistanceFromLine(start, end, meet) > limit || !IsOutside(before, start, end, after, meet))
            return false;
        ring[i] = meet;
        ring.RemoveAt((i + 1) % ring.Count);
        return true;
    }

    /// <summary>The meeting point moved out by two micrometers, so that rounding gives nothing up.</summary>
    private static Point RoundedOutward(double x, double y, Point start, Point end)
    {
        double alongX = end.X - start.X;
        double alongY = end.Y - start.Y;
        double length = Math.Sqrt(alongX * alongX + alongY * alongY);
        return new Point((long)Math.Round(x + 2 * alongY / length), (long)Math.Round(y - 2 * alongX / length));
    }

    private static bool IsOutside(Point before, Point start, Point end, Point after, Point meet) =>
        Orientation.Of(before, meet, start) >= 0 && Orientation.Of(meet, after, end) >= 0
        && Orientation.Of(start, end, meet) < 0;

    private static double DistanceFromLine(Point start, Point end, Point point)
    {
        double alongX = end.X - start.X;
        double alongY = end.Y - start.Y;
        double length = Math.Sqrt(alongX * alongX + alongY * alongY);
        return length == 0 ? double.MaxValue : Math.Abs(alongX * (point.Y - start.Y) - alongY * (point.X - start.X)) / length;
    }

    private static bool IsSimple(Polygon polygon)
    {
        System.Collections.Immutable.ImmutableArray<Point> ring = polygon.Outer;
        for (int i = 0; i < ring.Length; i++)
        {
            Point start = ring[i];
            Point end = ring[(i + 1) % ring.Length];
            for (int j = i + 2; j < ring.Length; j++)
            {
                Point otherStart = ring[j];
                Point otherEnd = ring[(j + 1) % ring.Length];
                if (otherEnd != start && MeetsEdge(start, end, otherStart, otherEnd))
                    return false;
            }
        }
        return true;
    }

    private static bool MeetsEdge(Point start, Point end, Point otherStart, Point otherEnd) =>
        Orientation.Of(start, end, otherStart) * Orientation.Of(start, end, otherEnd) <= 0
        && Orientation.Of(otherStart, otherEnd, start) * Orientation.Of(otherStart, otherEnd, end) <= 0
        && Box.Around([start, end]).Touches(Box.Around([otherStart, otherEnd]));
}
