using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>Where the grain arrow of a piece is drawn; always along x, its head toward +x.</summary>
internal static class GrainArrow
{
    private const double ShareOfChord = 0.6;

    /// <summary>A chord farther from the middle must be this much longer to be taken.</summary>
    private const double WorthMoving = 1.25;

    /// <summary>Heights tried, in sixteenths of the depth, from the middle outward.</summary>
    private static readonly int[] Sixteenths = [8, 7, 9, 6, 10, 5, 11, 4, 12];

    /// <summary>The drawn grainline, leveled about its middle.</summary>
    public static Segment Level(Segment drawn)
    {
        long y = (drawn.Start.Y + drawn.End.Y) / 2;
        return new Segment(new Point(Math.Min(drawn.Start.X, drawn.End.X), y), new Point(Math.Max(drawn.Start.X, drawn.End.X), y));
    }

    /// <summary>A line inside the piece, near the middle of its depth.</summary>
    public static Segment Inside(Polygon piece)
    {
        Box bounds = piece.Bounds;
        (long Start, long End, long Y) best = (bounds.MinX, bounds.MinX, bounds.MinY);
        foreach (int sixteenth in Sixteenths)
        {
            long y = bounds.MinY + bounds.Height * sixteenth / 16;
            (long start, long end) = LongestChord(piece, y);
            if (end - start > WorthMoving * (best.End - best.Start))
                best = (start, end, y);
        }
        long middle = (best.Start + best.End) / 2;
        long half = (long)(ShareOfChord / 2 * (best.End - best.Start));
        return new Segment(new Point(middle - half, best.Y), new Point(middle + half, best.Y));
    }

    private static (long Start, long End) LongestChord(Polygon piece, long y)
    {
        List<double> crossings = [];
        for (int i = 0; i < piece.Outer.Length; i++)
        {
            Point start = piece.Outer[i];
            Point end = piece.Outer[(i + 1) % piece.Outer.Length];
            if (start.Y <= y != end.Y <= y)
                crossings.Add(start.X + (end.X - start.X) * ((y - start.Y) / (double)(end.Y - start.Y)));
        }
        crossings.Sort();
        (long Start, long End) longest = (0, 0);
        for (int i = 0; i + 1 < crossings.Count; i += 2)
        {
            if (crossings[i + 1] - crossings[i] > longest.End - longest.Start)
                longest = ((long)Math.Ceiling(crossings[i]), (long)Math.Floor(crossings[i + 1]));
        }
        return longest;
    }
}
