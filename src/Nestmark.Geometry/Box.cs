namespace Nestmark.Geometry;

/// <summary>An upright rectangle in whole micrometers, edges included. <c>default</c> is the single point at the origin.</summary>
public readonly record struct Box(long MinX, long MinY, long MaxX, long MaxY)
{
    /// <summary>Extent along x.</summary>
    public long Width => MaxX - MinX;

    /// <summary>Extent along y.</summary>
    public long Height => MaxY - MinY;

    /// <summary>The smallest box around some points.</summary>
    /// <exception cref="ArgumentException">No point.</exception>
    public static Box Around(ReadOnlySpan<Point> points)
    {
        if (points.IsEmpty)
            throw new ArgumentException("A box needs at least one point.", nameof(points));
        Box box = new(points[0].X, points[0].Y, points[0].X, points[0].Y);
        foreach (Point point in points[1..])
            box = box.Including(point);
        return box;
    }

    /// <summary>This box, grown to hold a point.</summary>
    public Box Including(Point point) =>
        new(Math.Min(MinX, point.X), Math.Min(MinY, point.Y), Math.Max(MaxX, point.X), Math.Max(MaxY, point.Y));

    /// <summary>This box, grown to hold another.</summary>
    public Box Including(Box other) =>
        new(Math.Min(MinX, other.MinX), Math.Min(MinY, other.MinY), Math.Max(MaxX, other.MaxX), Math.Max(MaxY, other.MaxY));

    /// <summary>This box, moved.</summary>
    public Box Shifted(Point by) => new(MinX + by.X, MinY + by.Y, MaxX + by.X, MaxY + by.Y);

    /// <summary>Whether the insides of two boxes meet.</summary>
    public bool InteriorMeets(Box other) =>
        MinX < other.MaxX && other.MinX < MaxX && MinY < other.MaxY && other.MinY < MaxY;

    /// <summary>Whether two boxes meet, touching included.</summary>
    public bool Touches(Box other) =>
        MinX <= other.MaxX && other.MinX <= MaxX && MinY <= other.MaxY && other.MinY <= MaxY;

    /// <summary>Whether another box lies inside, touching included.</summary>
    public bool Contains(Box other) =>
        MinX <= other.MinX && other.MaxX <= MaxX && MinY <= other.MinY && other.MaxY <= MaxY;
}
