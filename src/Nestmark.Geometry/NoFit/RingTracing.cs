using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>Joins boundary stretches into rings with the region on their left.</summary>
internal static class RingTracing
{
    /// <summary>All rings, in the order of their lowest stretch; where rings touch, the sharpest left turn is taken, so none crosses itself.</summary>
    public static ImmutableArray<ImmutableArray<Point>> Of(List<BoundaryEdge> boundary)
    {
        BoundaryEdge[] edges = Cancelled(boundary);
        bool[] used = new bool[edges.Length];
        ImmutableArray<ImmutableArray<Point>>.Builder rings = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
        for (int i = 0; i < edges.Length; i++)
        {
            if (used[i])
                continue;
            ImmutableArray<Point> ring = Simplified(Trace(edges, used, i));
            if (ring.Length >= 3 && Polygon.TwiceSignedArea(ring.AsSpan()) != 0)
                rings.Add(ring);
        }
        return rings.ToImmutable();
    }

    /// <summary>Sorted, and without stretches that rounding has folded onto their opposite.</summary>
    private static BoundaryEdge[] Cancelled(List<BoundaryEdge> boundary)
    {
        BoundaryEdge[] sorted = [.. boundary];
        Array.Sort(sorted, CompareUndirected);
        List<BoundaryEdge> kept = new(sorted.Length);
        for (int i = 0; i < sorted.Length;)
        {
            BoundaryEdge edge = sorted[i];
            int net = 0;
            for (; i < sorted.Length && CompareUndirected(sorted[i], edge) == 0; i++)
                net += sorted[i] == edge ? 1 : -1;
            for (int copy = 0; copy < Math.Abs(net); copy++)
                kept.Add(net > 0 ? edge : edge.Reversed);
        }
        kept.Sort();
        return [.. kept];
    }

    private static int CompareUndirected(BoundaryEdge left, BoundaryEdge right) => Upward(left).CompareTo(Upward(right));

    private static BoundaryEdge Upward(BoundaryEdge edge) => edge.Start < edge.End ? edge : edge.Reversed;

    private static List<Point> Trace(BoundaryEdge[] edges, bool[] used, int first)
    {
        List<Point> ring = [];
        int current = first;
        do
        {
            used[current] = true;
            ring.Add(edges[current].Start);
            current = Next(edges, used, current, first);
        }
        while (current != first && current >= 0);
        return ring;
    }

    /// <summary>The stretch that goes on from the end of the current one, the first of the ring included; -1 when there is none.</summary>
    private static int Next(BoundaryEdge[] edges, bool[] used, int current, int first)
    {
        Point at = edges[current].End;
        Point direction = at - edges[current].Start;
        int best = -1;
        for (int i = FirstFrom(edges, at); i < edges.Length && edges[i].Start == at; i++)
        {
            if (used[i] && i != first)
                continue;
            if (best < 0 || IsSharper(direction, edges[i].End - at, edges[best].End - at))
                best = i;
        }
        return best;
    }

    /// <summary>Whether turning from <paramref name="direction"/> to <paramref name="candidate"/> goes more to the left than to <paramref name="other"/>.</summary>
    private static bool IsSharper(Point direction, Point candidate, Point other)
    {
        int candidateHalf = Half(direction, candidate);
        int otherHalf = Half(direction, other);
        return candidateHalf != otherHalf ? candidateHalf > otherHalf : Orientation.Cross(other, candidate) > 0;
    }

    /// <summary>2 for a turn to the left, 1 for straight on, 0 for a turn to the right.</summary>
    private static int Half(Point direction, Point other) => 1 + Math.Sign(Orientation.Cross(direction, other));

    private static int FirstFrom(BoundaryEdge[] edges, Point start)
    {
        int low = 0;
        int high = edges.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (edges[middle].Start < start)
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>The ring without the points in the middle of straight runs and without spikes.</summary>
    private static ImmutableArray<Point> Simplified(List<Point> ring)
    {
        List<Point> kept = [.. ring];
        bool changed = true;
        while (changed && kept.Count >= 3)
        {
            changed = false;
            for (int i = 0; i < kept.Count && kept.Count >= 3; i++)
            {
                Point before = kept[(i + kept.Count - 1) % kept.Count];
                Point after = kept[(i + 1) % kept.Count];
                if (before == kept[i] || Orientation.Of(before, kept[i], after) == 0)
                {
                    kept.RemoveAt(i--);
                    changed = true;
                }
            }
        }
        return [.. kept];
    }
}
