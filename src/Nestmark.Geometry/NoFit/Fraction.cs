namespace Nestmark.Geometry.NoFit;

/// <summary>A rational number with a denominator above zero; comparison is exact through 128 bits.</summary>
internal readonly record struct Fraction : IComparable<Fraction>
{
    private Fraction(long numerator, long denominator)
    {
        Numerator = numerator;
        Denominator = denominator;
    }

    public static Fraction Zero { get; } = new(0, 1);

    public static Fraction One { get; } = new(1, 1);

    public long Numerator { get; }

    public long Denominator { get; }

    /// <summary>Neither may be beyond ±2^62; the denominator is not zero.</summary>
    public static Fraction Of(long numerator, long denominator) =>
        denominator < 0 ? new Fraction(-numerator, -denominator) : new Fraction(numerator, denominator);

    /// <summary>This part of a displacement, rounded to the nearest whole micrometer, halves up.</summary>
    public Point Of(Point displacement) => new(Part(displacement.X), Part(displacement.Y));

    public int CompareTo(Fraction other) =>
        Denominator == other.Denominator
            ? Numerator.CompareTo(other.Numerator)
            : ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    private long Part(long whole)
    {
        Int128 doubled = 2 * (Int128)whole * Numerator + Denominator;
        Int128 divisor = 2 * (Int128)Denominator;
        Int128 quotient = doubled / divisor;
        return (long)(doubled % divisor < 0 ? quotient - 1 : quotient);
    }
}
