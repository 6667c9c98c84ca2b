namespace Nestmark.Geometry;

/// <summary>The distance between two shapes that do not overlap; exact.</summary>
public static class Clearance
{
    /// <summary>Whether no boundary point of one comes nearer to the other than a gap. Shapes inside each other are not noticed.</summary>
    /// <param name="first">Any polygon.</param>
    /// <param name="second">Any polygon.</param>
    /// <param name="gap">Zero or more, up to 1 m.</param>
    public static bool IsAtLeast(Polygon first, Polygon second, Length gap)
    {
        long margin = gap.Micrometers;
        Box near = new(first.Bounds.MinX - margin, first.Bounds.MinY - margin, first.Bounds.MaxX + margin, first.Bounds.MaxY + margin);
        if (!near.InteriorMeets(second.Bounds))
            return true;
        foreach ((Point start, Point end) in Edges(first))
        {
            Box box = Box.Around([start, end]);
            Box reach = new(box.MinX - margin, box.MinY - margin, box.MaxX + margin, box.MaxY + margin);
            foreach ((Point otherStart, Point otherEnd) in Edges(second))
            {
                if (reach.InteriorMeets(Widened(Box.Around([otherStart, otherEnd]))) && !IsApart(start, end, otherStart, otherEnd, margin))
                    return false;
            }
        }
        return true;
    }

    /// <summary>Boxes of upright edges have no inside; a micrometer more gives them one.</summary>
    private static Box Widened(Box box) => new(box.MinX - 1, box.MinY - 1, box.MaxX + 1, box.MaxY + 1);

    private static bool IsApart(Point start, Point end, Point otherStart, Point otherEnd, long gap)
    {
        bool crosses = Orientation.Of(start, end, otherStart) * Orientation.Of(start, end, otherEnd) < 0
            && Orientation.Of(otherStart, otherEnd, start) * Orientation.Of(otherStart, otherEnd, end) < 0;
        return !crosses
            && IsApart(start, end, otherStart, gap) && IsApart(start, end, otherEnd, gap)
            && IsApart(otherStart, otherEnd, start, gap) && IsApart(otherStart, otherEnd, end, gap);
    }

    private static bool IsApart(Point start, Point end, Point point, long gap)
    {
        Point along = end - start;
        Int128 squaredGap = (Int128)gap * gap;
        long part = Orientation.Dot(along, point - start);
        long whole = Orientation.Dot(along, along);
        if (part <= 0)
            return Squared(point - start) >= squaredGap;
        if (part >= whole)
            return Squared(point - end) >= squaredGap;
        Int128 cross = Orientation.Cross(along, point - start);
        return Square(cross) >= squaredGap * whole;
    }

    private static Int128 Squared(Point displacement) => (Int128)displacement.X * displacement.X + (Int128)displacement.Y * displacement.Y;

    /// <summary>Cross products stay below 2^63, their squares within 128 bits.</summary>
    private static Int128 Square(Int128 value) => value * value;

    private static IEnumerable<(Point Start, Point End)> Edges(Polygon polygon)
    {
        foreach (IReadOnlyList<Point> ring in (IEnumerable<IReadOnlyList<Point>>)[polygon.Outer, .. polygon.Holes])
        {
            for (int i = 0; i < ring.Count; i++)
                yield return (ring[i], ring[i + 1 == ring.Count ? 0 : i + 1]);
        }
    }
}
