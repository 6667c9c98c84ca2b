namespace Nestmark.Geometry;

/// <summary>A point or a displacement in whole micrometers: x along the cloth, y across it, y up. <c>default</c> is the origin.</summary>
public readonly record struct Point(long X, long Y) : IComparable<Point>
{
    /// <summary>The origin.</summary>
    public static Point Origin => default;

    /// <summary>x in millimeters.</summary>
    public double XMillimeters => X / 1000.0;

    /// <summary>y in millimeters.</summary>
    public double YMillimeters => Y / 1000.0;

    /// <summary>A point from millimeters, each rounded to the nearest micrometer.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 km.</exception>
    public static Point FromMillimeters(double xMillimeters, double yMillimeters) =>
        new(Length.FromMillimeters(xMillimeters).Micrometers, Length.FromMillimeters(yMillimeters).Micrometers);

    /// <summary>The sum of two displacements.</summary>
    public static Point operator +(Point left, Point right) => new(left.X + right.X, left.Y + right.Y);

    /// <summary>The displacement from right to left.</summary>
    public static Point operator -(Point left, Point right) => new(left.X - right.X, left.Y - right.Y);

    /// <summary>The opposite displacement.</summary>
    public static Point operator -(Point point) => new(-point.X, -point.Y);

    /// <summary>Order by x, then y.</summary>
    public static bool operator <(Point left, Point right) => left.CompareTo(right) < 0;

    /// <summary>Order by x, then y.</summary>
    public static bool operator >(Point left, Point right) => left.CompareTo(right) > 0;

    /// <summary>Order by x, then y.</summary>
    public static bool operator <=(Point left, Point right) => left.CompareTo(right) <= 0;

    /// <summary>Order by x, then y.</summary>
    public static bool operator >=(Point left, Point right) => left.CompareTo(right) >= 0;

    /// <summary>The length of a displacement, not rounded to whole micrometers.</summary>
    public double NormMicrometers => Math.Sqrt((double)X * X + (double)Y * Y);

    /// <summary>The distance to another point, micrometers rounded to the nearest.</summary>
    public Length DistanceTo(Point other) => Length.FromMicrometers((long)Math.Round((other - this).NormMicrometers));

    /// <inheritdoc/>
    public int CompareTo(Point other) => X != other.X ? X.CompareTo(other.X) : Y.CompareTo(other.Y);
}
