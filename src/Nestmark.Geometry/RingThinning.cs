using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>Fewer vertices for a densely drawn ring, never giving up any of its inside.</summary>
/// <remarks>
/// Two steps. Inner vertices that lie close under the line between those kept are left out, as in a scan for a hull; then runs that turn outward
/// are replaced by the point where the first and the last edge of the run meet. Cost: O(n log n) as a rule.
/// </remarks>
public static class RingThinning
{
    /// <summary>Share of the distance that the first step may use.</summary>
    private const double InnerShare = 0.25;

    /// <summary>What the rounding of a measured place can hide, micrometers.</summary>
    private const double RoundingMicrometers = 1;

    /// <summary>A run that turns by more, 30 degrees, is a shape of its own.</summary>
    private static readonly double LargestTurnCosine = Angle.FromDegrees(30).CosineRatio;

    /// <summary>A ring with fewer vertices that holds the given one and keeps within a distance of it. Marked vertices stay; new ones are of kind <see cref="VertexKind.Curve"/>.</summary>
    /// <param name="ring">Three vertices or more, first not repeated, either way round. That the result does not cross itself is not checked.</param>
    /// <param name="within">Largest distance, above zero.</param>
    public static ImmutableArray<OutlineVertex> Thin(ImmutableArray<OutlineVertex> ring, Length within)
    {
        if (within <= Length.Zero)
            throw new ArgumentException("The distance must be above zero.", nameof(within));
        bool isClockwise = Polygon.TwiceSignedArea([.. ring.Select(vertex => vertex.Point)]) < 0;
        ImmutableArray<OutlineVertex> ordered = isClockwise ? [.. ring.Reverse()] : ring;
        int first = FirstToStay(ordered);
        List<OutlineVertex> open = [.. ordered[first..], .. ordered[..first], ordered[first]];
        double inner = InnerShare * within.Micrometers;
        List<OutlineVertex> scanned = WithoutInner(open, inner);
        List<OutlineVertex> thinned = WithRunsReplaced(scanned, within.Micrometers - inner - RoundingMicrometers);
        thinned.RemoveAt(thinned.Count - 1);
        if (thinned.Count < 3)
            return ring;
        return isClockwise ? [.. Enumerable.Reverse(thinned)] : [.. thinned];
    }

    /// <summary>A marked vertex, or else the lowest in x, then y, which is an outer one.</summary>
    private static int FirstToStay(ImmutableArray<OutlineVertex> ring)
    {
        int lowest = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            if (ring[i].Kind == VertexKind.Marked)
                return i;
            if (ring[i].Point < ring[lowest].Point)
                lowest = i;
        }
        return lowest;
    }

    /// <summary>Leaves out vertices on or left of the line between those kept, no farther from it than a limit.</summary>
    private static List<OutlineVertex> WithoutInner(List<OutlineVertex> run, double limitMicrometers)
    {
        List<OutlineVertex> kept = [run[0]];
        List<double> depths = [0];
        foreach (OutlineVertex next in run.Skip(1))
        {
            double depth = 0;
            while (kept.Count > 1 && kept[^1].Kind != VertexKind.Marked && Depth(kept[^2].Point, kept[^1].Point, next.Point) is >= 0 and double under
                && under + Math.Max(depth, depths[^1]) <= limitMicrometers)
            {
                depth = under + Math.Max(depth, depths[^1]);
                kept.RemoveAt(kept.Count - 1);
                depths.RemoveAt(depths.Count - 1);
            }
            kept.Add(next);
            depths.Add(depth);
        }
        return kept;
    }

    /// <summary>How far a point lies left of a line, between its ends; below zero when right of it or beside it.</summary>
    private static double Depth(Point start, Point point, Point end)
    {
        Point along = end - start;
        bool isBetween = Orientation.Dot(along, point - start) > 0 && Orientation.Dot(along, end - point) > 0;
        return isBetween ? Orientation.Cross(along, point - start) / along.NormMicrometers : -1;
    }

    private static List<OutlineVertex> WithRunsReplaced(List<OutlineVertex> run, double limitMicrometers)
    {
        List<OutlineVertex> kept = [run[0]];
        int from = 0;
        while (from + 1 < run.Count)
        {
            (int to, Point meeting) = LongestRun(run, from, limitMicrometers);
            if (to > from + 2)
                kept.Add(new OutlineVertex(meeting, VertexKind.Curve));
            else
                to = from + 1;
            kept.Add(run[to]);
            from = to;
        }
        return kept;
    }

    /// <summary>The farthest vertex that one point beyond the run can reach; tried in steps that double, then halve.</summary>
    private static (int To, Point Meeting) LongestRun(List<OutlineVertex> run, int from, double limitMicrometers)
    {
        (int To, Point Meeting) best = (from, default);
        int step = 2;
        for (int growing = 1; step > 0;)
        {
            int to = Math.Max(best.To, from + 1) + step;
            if (to < run.Count && MeetingBeyond(run, from, to, limitMicrometers) is Point meeting)
            {
                best = (to, meeting);
                step *= 1 + growing;
                continue;
            }
            growing = 0;
            step /= 2;
        }
        return best;
    }

    /// <summary>The point where the first and the last edge of a run meet, moved out to the grid; <c>null</c> where it is too far off or would cut the run.</summary>
    private static Point? MeetingBeyond(List<OutlineVertex> run, int from, int to, double limitMicrometers)
    {
        Point first = run[from + 1].Point - run[from].Point;
        Point last = run[to].Point - run[to - 1].Point;
        double cross = Orientation.Cross(first, last);
        if (cross <= 0 || Orientation.Dot(first, last) < LargestTurnCosine * first.NormMicrometers * last.NormMicrometers || !TurnsOutward(run, from, to))
            return null;
        Point gap = run[to].Point - run[from].Point;
        double along = Orientation.Cross(gap, last) / cross;
        (double x, double y) = (run[from].Point.X + along * first.X, run[from].Point.Y + along * first.Y);
        double chord = gap.NormMicrometers;
        Point meeting = new((long)Math.Round(x + 1.5 * gap.Y / chord), (long)Math.Round(y - 1.5 * gap.X / chord));
        bool isNear = Enumerable.Range(from + 1, to - from - 2).Any(i =>
            (PointLocation.NearestOnSegment(run[i].Point, run[i + 1].Point, meeting) - meeting).NormMicrometers <= limitMicrometers);
        return isNear && Holds(run, from, to, meeting) ? meeting : null;
    }

    private static bool TurnsOutward(List<OutlineVertex> run, int from, int to) => Enumerable.Range(from + 1, to - from - 1).All(i =>
        run[i].Kind != VertexKind.Marked && Orientation.Of(run[i - 1].Point, run[i].Point, run[i + 1].Point) >= 0);

    /// <summary>Whether the run lies left of the way over the meeting point.</summary>
    private static bool Holds(List<OutlineVertex> run, int from, int to, Point meeting) =>
        Enumerable.Range(from + 1, to - from - 1).All(i =>
            Orientation.Of(run[from].Point, meeting, run[i].Point) >= 0 && Orientation.Of(meeting, run[to].Point, run[i].Point) >= 0);
}
