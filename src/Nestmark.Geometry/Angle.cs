using System.Globalization;

namespace Nestmark.Geometry;

/// <summary>An angle in whole millionths of a degree, counter-clockwise, kept in 0 (inclusive) to 360 (exclusive) degrees. <c>default</c> is zero.</summary>
/// <remarks>The one file where the machine's trigonometry is called.</remarks>
public readonly record struct Angle : IComparable<Angle>
{
    private const long PerDegree = 1_000_000;
    private const long FullTurn = 360 * PerDegree;
    private const long QuarterTurn = 90 * PerDegree;

    private readonly long _millionths;

    private Angle(long millionths) => _millionths = ((millionths % FullTurn) + FullTurn) % FullTurn;

    /// <summary>No turn.</summary>
    public static Angle Zero => default;

    /// <summary>A quarter turn counter-clockwise.</summary>
    public static Angle Quarter => new(QuarterTurn);

    /// <summary>Half a turn.</summary>
    public static Angle Half => new(2 * QuarterTurn);

    /// <summary>The angle in degrees, 0 (inclusive) to 360 (exclusive).</summary>
    public double TotalDegrees => _millionths / (double)PerDegree;

    /// <summary>The angle in degrees, above -180 up to 180.</summary>
    public double SignedDegrees => TotalDegrees > 180 ? TotalDegrees - 360 : TotalDegrees;

    /// <summary>Whether it is a whole number of quarter turns.</summary>
    public bool IsQuarterTurn => _millionths % QuarterTurn == 0;

    /// <summary>The number of quarter turns, rounded down: 0 to 3.</summary>
    public int QuarterTurns => (int)(_millionths / QuarterTurn);

    /// <summary>The sine; exact for quarter turns.</summary>
    public double SineRatio => IsQuarterTurn ? QuarterTurns switch { 1 => 1, 3 => -1, _ => 0 } : Sin(Radians);

    /// <summary>The cosine; exact for quarter turns.</summary>
    public double CosineRatio => IsQuarterTurn ? QuarterTurns switch { 0 => 1, 2 => -1, _ => 0 } : Cos(Radians);

    private double Radians => TotalDegrees * Math.PI / 180;

    /// <summary>An angle in degrees, rounded to a millionth of a degree and brought into one full turn.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 million degrees.</exception>
    public static Angle FromDegrees(double degrees)
    {
        if (!(Math.Abs(degrees) <= 1e6))
            throw new ArgumentException("An angle must be a number within ±1 million degrees.", nameof(degrees));
        return new Angle((long)Math.Round(degrees * PerDegree, MidpointRounding.AwayFromZero));
    }

    /// <summary>The direction of a vector, from the x axis. The zero vector gives zero.</summary>
    public static Angle OfDirection(double xRatio, double yRatio) => FromDegrees(Atan2(yRatio, xRatio) * 180 / Math.PI);

    /// <summary>The sum.</summary>
    public static Angle operator +(Angle left, Angle right) => new(left._millionths + right._millionths);

    /// <summary>The difference.</summary>
    public static Angle operator -(Angle left, Angle right) => new(left._millionths - right._millionths);

    /// <summary>The opposite turn.</summary>
    public static Angle operator -(Angle angle) => new(-angle._millionths);

    /// <summary>Order by size within one turn.</summary>
    public static bool operator <(Angle left, Angle right) => left._millionths < right._millionths;

    /// <summary>Order by size within one turn.</summary>
    public static bool operator >(Angle left, Angle right) => left._millionths > right._millionths;

    /// <summary>Order by size within one turn.</summary>
    public static bool operator <=(Angle left, Angle right) => left._millionths <= right._millionths;

    /// <summary>Order by size within one turn.</summary>
    public static bool operator >=(Angle left, Angle right) => left._millionths >= right._millionths;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => _millionths.CompareTo(other._millionths);

    /// <summary>Degrees with up to six decimals, as "45 deg".</summary>
    public override string ToString() => TotalDegrees.ToString("0.######", CultureInfo.InvariantCulture) + " deg";

#pragma warning disable RS0030 // The one place for the machine's trigonometry.
    /// <summary>Sine of radians.</summary>
    public static double Sin(double radiansRatio) => Math.Sin(radiansRatio);

    /// <summary>Cosine of radians.</summary>
    public static double Cos(double radiansRatio) => Math.Cos(radiansRatio);

    /// <summary>Direction of a vector in radians, -π to π.</summary>
    public static double Atan2(double yRatio, double xRatio) => Math.Atan2(yRatio, xRatio);

    /// <summary>Arc cosine in radians.</summary>
    public static double Acos(double ratio) => Math.Acos(ratio);
#pragma warning restore RS0030
}
