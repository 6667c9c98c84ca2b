using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>The sum of two convex rings: its edges are those of both, sorted by direction.</summary>
/// <remarks>O(n + m) and exact. E. Fogel, Minkowski sums (lecture), as <c>references/nesting-methods.md</c> 2.2 gives it.</remarks>
internal static class ConvexSum
{
    /// <summary>The sum.</summary>
    /// <param name="first">Simple and counter-clockwise, micrometers.</param>
    /// <param name="second">As <paramref name="first"/>.</param>
    /// <returns>Counter-clockwise, without straight corners; <c>null</c> unless both rings are convex.</returns>
    public static ImmutableArray<Point>? Of(ReadOnlySpan<Point> first, ReadOnlySpan<Point> second)
    {
        if (!IsConvex(first) || !IsConvex(second))
            return null;
        (int firstStart, int secondStart) = (Lowest(first), Lowest(second));
        List<Point> sum = [];
        Point here = first[firstStart] + second[secondStart];
        Point before = Point.Origin;
        for (int i = 0, j = 0; i < first.Length || j < second.Length;)
        {
            Point edge = i < first.Length ? Edge(first, firstStart + i) : Edge(second, secondStart + j);
            Point other = j < second.Length ? Edge(second, secondStart + j) : edge;
            long side = i < first.Length && j < second.Length ? Orientation.Cross(edge, other) : i < first.Length ? 1 : -1;
            Point step = side > 0 ? edge : side < 0 ? other : edge + other;
            (i, j) = (side >= 0 ? i + 1 : i, side <= 0 ? j + 1 : j);
            if (Orientation.Cross(before, step) != 0 || sum.Count == 0)
                sum.Add(here);
            here += step;
            before = step;
        }
        return [.. sum];
    }

    private static bool IsConvex(ReadOnlySpan<Point> ring)
    {
        for (int i = 0; i < ring.Length; i++)
        {
            if (Orientation.Cross(Edge(ring, i), Edge(ring, i + 1)) < 0)
                return false;
        }
        return ring.Length > 2;
    }

    private static Point Edge(ReadOnlySpan<Point> ring, int index) => ring[(index + 1) % ring.Length] - ring[index % ring.Length];

    /// <summary>The lowest corner, of those the leftmost: the edge after it is the first by direction.</summary>
    private static int Lowest(ReadOnlySpan<Point> ring)
    {
        int lowest = 0;
        for (int i = 1; i < ring.Length; i++)
        {
            if (ring[i].Y < ring[lowest].Y || (ring[i].Y == ring[lowest].Y && ring[i].X < ring[lowest].X))
                lowest = i;
        }
        return lowest;
    }
}
