using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>How a shape lies: first turned over along the x axis if flipped, then turned counter-clockwise about the origin. <c>default</c> leaves it as drawn.</summary>
/// <remarks>Quarter turns are exact swaps; any other angle rounds each point to the nearest micrometer.</remarks>
public readonly record struct Turn(Angle Angle, Facing Facing)
{
    /// <summary>As drawn.</summary>
    public static Turn None => default;

    /// <summary>A turn without a flip.</summary>
    public static Turn By(Angle angle) => new(angle, Facing.Plain);

    /// <summary>Where a point goes.</summary>
    public Point Apply(Point point)
    {
        Point faced = Facing == Facing.Flipped ? new Point(point.X, -point.Y) : point;
        if (Angle.IsQuarterTurn)
            return ApplyQuarterTurns(faced, Angle.QuarterTurns);
        double cosine = Angle.CosineRatio;
        double sine = Angle.SineRatio;
        return new Point(
            (long)Math.Round(cosine * faced.X - sine * faced.Y, MidpointRounding.AwayFromZero),
            (long)Math.Round(sine * faced.X + cosine * faced.Y, MidpointRounding.AwayFromZero));
    }

    /// <summary>Where a polygon goes; counter-clockwise again after a flip.</summary>
    public Polygon Apply(Polygon polygon)
    {
        Turn turn = this;
        return polygon.Mapped(turn.Apply);
    }

    /// <summary>Where a list of points goes, in the same order.</summary>
    public ImmutableArray<Point> Apply(ImmutableArray<Point> points)
    {
        Turn turn = this;
        return [.. points.Select(turn.Apply)];
    }

    private static Point ApplyQuarterTurns(Point point, int quarters) => quarters switch
    {
        0 => point,
        1 => new Point(-point.Y, point.X),
        2 => new Point(-point.X, -point.Y),
        _ => new Point(point.Y, -point.X),
    };
}
