using System.Globalization;

namespace Nestmark.Geometry;

/// <summary>A length in whole micrometers, within ±1 km. <c>default</c> is zero.</summary>
/// <remarks>1 in = 25.4 mm and 1 yd = 914.4 mm exactly (international yard and pound agreement, 1959).</remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Micrometers in a millimeter.</summary>
    public const long MicrometersPerMillimeter = 1_000;

    /// <summary>Micrometers in an inch; exact.</summary>
    public const long MicrometersPerInch = 25_400;

    /// <summary>Micrometers in a yard; exact.</summary>
    public const long MicrometersPerYard = 914_400;

    private const long Limit = 1_000_000_000;

    private Length(long micrometers) => Micrometers = micrometers;

    /// <summary>The zero length.</summary>
    public static Length Zero => default;

    /// <summary>The length in whole micrometers.</summary>
    public long Micrometers { get; }

    /// <summary>The length in millimeters.</summary>
    public double TotalMillimeters => Micrometers / (double)MicrometersPerMillimeter;

    /// <summary>The length in centimeters.</summary>
    public double TotalCentimeters => Micrometers / 10_000.0;

    /// <summary>The length in meters.</summary>
    public double TotalMeters => Micrometers / 1_000_000.0;

    /// <summary>The length in inches.</summary>
    public double TotalInches => Micrometers / (double)MicrometersPerInch;

    /// <summary>The length in yards.</summary>
    public double TotalYards => Micrometers / (double)MicrometersPerYard;

    /// <summary>A length of whole micrometers.</summary>
    /// <exception cref="ArgumentException">Beyond ±1 km.</exception>
    public static Length FromMicrometers(long micrometers)
    {
        if (micrometers is < -Limit or > Limit)
            throw new ArgumentException("A length must lie within ±1 km.", nameof(micrometers));
        return new Length(micrometers);
    }

    /// <summary>A length in millimeters, rounded to the nearest micrometer.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 km.</exception>
    public static Length FromMillimeters(double millimeters) => Rounded(millimeters * MicrometersPerMillimeter);

    /// <summary>A length in centimeters, rounded to the nearest micrometer.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 km.</exception>
    public static Length FromCentimeters(double centimeters) => Rounded(centimeters * 10_000);

    /// <summary>A length in meters, rounded to the nearest micrometer.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 km.</exception>
    public static Length FromMeters(double meters) => Rounded(meters * 1_000_000);

    /// <summary>A length in inches, rounded to the nearest micrometer.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 km.</exception>
    public static Length FromInches(double inches) => Rounded(inches * MicrometersPerInch);

    /// <summary>A length in yards, rounded to the nearest micrometer.</summary>
    /// <exception cref="ArgumentException">Not a number, or beyond ±1 km.</exception>
    public static Length FromYards(double yards) => Rounded(yards * MicrometersPerYard);

    /// <summary>The sum.</summary>
    public static Length operator +(Length left, Length right) => FromMicrometers(left.Micrometers + right.Micrometers);

    /// <summary>The difference.</summary>
    public static Length operator -(Length left, Length right) => FromMicrometers(left.Micrometers - right.Micrometers);

    /// <summary>The opposite length.</summary>
    public static Length operator -(Length length) => new(-length.Micrometers);

    /// <summary>A whole multiple.</summary>
    public static Length operator *(Length length, int factor) => FromMicrometers(length.Micrometers * factor);

    /// <summary>The length divided by a whole number, rounded toward zero.</summary>
    public static Length operator /(Length length, int divisor) => new(length.Micrometers / divisor);

    /// <summary>Whether left is shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Micrometers < right.Micrometers;

    /// <summary>Whether left is longer.</summary>
    public static bool operator >(Length left, Length right) => left.Micrometers > right.Micrometers;

    /// <summary>Whether left is shorter or equal.</summary>
    public static bool operator <=(Length left, Length right) => left.Micrometers <= right.Micrometers;

    /// <summary>Whether left is longer or equal.</summary>
    public static bool operator >=(Length left, Length right) => left.Micrometers >= right.Micrometers;

    /// <summary>The smallest whole multiple of <paramref name="step"/> that is not below this length.</summary>
    /// <exception cref="ArgumentException">The step is not above zero.</exception>
    public Length RoundedUpTo(Length step)
    {
        if (step.Micrometers <= 0)
            throw new ArgumentException("A step must be above zero.", nameof(step));
        long steps = Math.Max(0, (Micrometers + step.Micrometers - 1) / step.Micrometers);
        return FromMicrometers(steps * step.Micrometers);
    }

    /// <inheritdoc/>
    public int CompareTo(Length other) => Micrometers.CompareTo(other.Micrometers);

    /// <summary>Millimeters with up to three decimals, as "12.5 mm".</summary>
    public override string ToString() => TotalMillimeters.ToString("0.###", CultureInfo.InvariantCulture) + " mm";

    private static Length Rounded(double micrometers)
    {
        if (!(Math.Abs(micrometers) <= Limit))
            throw new ArgumentException("A length must be a number within ±1 km.");
        return new Length((long)Math.Round(micrometers, MidpointRounding.AwayFromZero));
    }
}
