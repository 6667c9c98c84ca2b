using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>A place or displacement in micrometers, not yet whole. <c>default</c> is the origin.</summary>
internal readonly record struct Vector(double X, double Y)
{
    /// <summary>Length in micrometers.</summary>
    public double Norm => Math.Sqrt(X * X + Y * Y);

    /// <summary>The same direction, length one.</summary>
    public Vector Unit => new(X / Norm, Y / Norm);

    /// <summary>Turned a quarter clockwise: outward of a segment of a counter-clockwise ring.</summary>
    public Vector Right => new(Y, -X);

    public static Vector Of(Point point) => new(point.X, point.Y);

    public static Vector operator +(Vector left, Vector right) => new(left.X + right.X, left.Y + right.Y);

    public static Vector operator -(Vector left, Vector right) => new(left.X - right.X, left.Y - right.Y);

    public static Vector operator -(Vector vector) => new(-vector.X, -vector.Y);

    public static Vector operator *(double factor, Vector vector) => new(factor * vector.X, factor * vector.Y);

    public double Dot(Vector other) => X * other.X + Y * other.Y;

    /// <summary>Above zero when <paramref name="other"/> lies counter-clockwise of this.</summary>
    public double Cross(Vector other) => X * other.Y - Y * other.X;

    /// <summary>The mirror image about a line through <paramref name="place"/>.</summary>
    /// <param name="place">On the line.</param>
    /// <param name="direction">Of the line; length one.</param>
    public Vector MirroredAbout(Vector place, Vector direction)
    {
        Vector from = this - place;
        return place + 2 * from.Dot(direction) * direction - from;
    }

    /// <summary>The nearest whole micrometers.</summary>
    public Point Rounded() => new(
        (long)Math.Round(X, MidpointRounding.AwayFromZero), (long)Math.Round(Y, MidpointRounding.AwayFromZero));
}
