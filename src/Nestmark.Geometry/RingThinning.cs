using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>Leaves out vertices of a densely drawn ring that lie close to the line between those kept.</summary>
/// <remarks>Method: D. Douglas and T. Peucker (1973), Algorithms for the reduction of the number of points, The Canadian Cartographer 10(2). Cost: O(n log n) as a rule.</remarks>
public static class RingThinning
{
    /// <summary>The ring with as few of its vertices as keep every left-out one within a distance of the new outline. Marked vertices stay.</summary>
    /// <param name="ring">Three vertices or more, first not repeated. That the result does not cross itself is not checked.</param>
    /// <param name="within">Largest distance, above zero.</param>
    public static ImmutableArray<OutlineVertex> Thin(ImmutableArray<OutlineVertex> ring, Length within)
    {
        if (within <= Length.Zero)
            throw new ArgumentException("The distance must be above zero.", nameof(within));
        if (ring.Length < 4)
            return ring;
        bool[] keep = new bool[ring.Length + 1];
        int far = FarthestFromFirst(ring);
        int[] fixedOnes = [.. Enumerable.Range(0, ring.Length).Where(i => i == 0 || i == far || ring[i].Kind == VertexKind.Marked), ring.Length];
        Stack<(int From, int To)> runs = new();
        for (int i = 0; i + 1 < fixedOnes.Length; i++)
        {
            keep[fixedOnes[i]] = true;
            runs.Push((fixedOnes[i], fixedOnes[i + 1]));
        }
        while (runs.TryPop(out (int From, int To) run))
        {
            int middle = FarthestFromChord(ring, run.From, run.To, within.Micrometers);
            if (middle < 0)
                continue;
            keep[middle] = true;
            runs.Push((run.From, middle));
            runs.Push((middle, run.To));
        }
        return [.. ring.Where((_, i) => keep[i])];
    }

    private static int FarthestFromFirst(ImmutableArray<OutlineVertex> ring)
    {
        int far = 1;
        for (int i = 2; i < ring.Length; i++)
        {
            if (ring[i].Point.DistanceTo(ring[0].Point) > ring[far].Point.DistanceTo(ring[0].Point))
                far = i;
        }
        return far;
    }

    private static int FarthestFromChord(ImmutableArray<OutlineVertex> ring, int from, int to, double withinMicrometers)
    {
        Point start = ring[from].Point;
        Point end = ring[to % ring.Length].Point;
        int farthest = -1;
        double largest = withinMicrometers;
        for (int i = from + 1; i < to; i++)
        {
            double distance = ToSegment(ring[i].Point, start, end);
            if (distance > largest)
                (farthest, largest) = (i, distance);
        }
        return farthest;
    }

    private static double ToSegment(Point point, Point start, Point end)
    {
        Point run = end - start;
        Point offset = point - start;
        double square = Orientation.Dot(run, run);
        double ratio = square == 0 ? 0 : Math.Clamp(Orientation.Dot(run, offset) / square, 0, 1);
        double x = offset.X - ratio * run.X;
        double y = offset.Y - ratio * run.Y;
        return Math.Sqrt(x * x + y * y);
    }
}
