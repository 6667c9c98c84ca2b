namespace Nestmark.Geometry.NoFit;

/// <summary>The convolution of two outlines: where an edge of one meets a corner of the other that turns through its direction.</summary>
/// <remarks>
/// Method: L. Guibas, L. Ramshaw, J. Stolfi (1983), A kinetic framework for computational geometry.
/// The segments form closed curves; the winding number at a place is the number of separate parts in which the two shapes overlap there.
/// Parallel edges are decided as if the first outline were turned counter-clockwise by an infinitely small angle, so the curves stay closed.
/// </remarks>
internal static class Convolution
{
    /// <summary>All segments. Both rings counter-clockwise and without spikes.</summary>
    public static List<ConvolutionSegment> Of(ReadOnlySpan<Point> first, ReadOnlySpan<Point> second)
    {
        List<ConvolutionSegment> segments = new(2 * (first.Length + second.Length));
        Sweep(first, second, Tie.AtEnd, segments);
        Sweep(second, first, Tie.AtStart, segments);
        return segments;
    }

    private static void Sweep(
        ReadOnlySpan<Point> corners, ReadOnlySpan<Point> edges, Tie tie, List<ConvolutionSegment> segments)
    {
        DirectionFilter filter = new(edges);
        for (int i = 0; i < corners.Length; i++)
        {
            Point corner = corners[i];
            Point before = corner - corners[(i == 0 ? corners.Length : i) - 1];
            Point after = corners[i + 1 == corners.Length ? 0 : i + 1] - corner;
            int sign = Math.Sign(Orientation.Cross(before, after));
            if (sign == 0)
                continue;
            (Point low, Point high) = sign > 0 ? (before, after) : (after, before);
            foreach (int j in filter.Within(low, high))
            {
                Point start = edges[j];
                Point end = edges[j + 1 == edges.Length ? 0 : j + 1];
                if (!IsSwept(low, high, end - start, tie))
                    continue;
                segments.Add(sign > 0
                    ? new ConvolutionSegment(corner + start, corner + end, 1)
                    : new ConvolutionSegment(corner + end, corner + start, -1));
            }
        }
    }

    private static bool IsSwept(Point low, Point high, Point direction, Tie tie)
    {
        long fromLow = Orientation.Cross(low, direction);
        long toHigh = Orientation.Cross(direction, high);
        return tie == Tie.AtEnd
            ? fromLow > 0 && toHigh >= 0
            : fromLow >= 0 && toHigh > 0;
    }

    private enum Tie
    {
        AtStart,
        AtEnd,
    }
}
