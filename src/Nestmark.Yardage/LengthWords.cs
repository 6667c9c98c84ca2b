using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>Lengths in the words of a tape measure and of a shop, the same in every output.</summary>
public static class LengthWords
{
    private const long MicrometersPerMeter = 1_000_000;
    private const long MicrometersPerCentimeter = 10_000;

    /// <summary>A measure for a tape: "31.4 cm" to the millimeter, or <c>12 3/8"</c> to the eighth of an inch; rounded to the nearest, half up.</summary>
    /// <param name="length">Zero or more; below zero a minus sign goes before it.</param>
    /// <param name="system">Which units.</param>
    public static string Tape(Length length, MeasureSystem system) => system == MeasureSystem.Imperial
        ? Inches(length, 8)
        : Metric(Nearest(length, Length.MicrometersPerMillimeter) / 10m, "0.#", " cm");

    /// <summary>Inches with a fraction in lowest terms, as <c>12 3/8"</c>; rounded to the nearest part, half up.</summary>
    /// <param name="length">Zero or more; below zero a minus sign goes before it.</param>
    /// <param name="partsInOne">Finest parts of an inch: 1, 2, 4, 8, 16, 32 or any other from 1 to 100.</param>
    /// <exception cref="ArgumentException">Parts outside 1 to 100.</exception>
    public static string Inches(Length length, int partsInOne)
    {
        if (partsInOne is < 1 or > 100)
            throw new ArgumentException("Parts of an inch must lie within 1 to 100.", nameof(partsInOne));
        long parts = Nearest(length, Length.MicrometersPerInch / (decimal)partsInOne);
        return (parts < 0 ? "-" : "") + Fraction.Text(Math.Abs(parts), partsInOne) + "\"";
    }

    /// <summary>A length to buy: "85 cm", "1.7 m", "1 7/8 yd", <c>7 3/8"</c>. Never less than the length itself.</summary>
    /// <remarks>Metric to the millimeter; imperial in eighths or thirds of a yard where it is a whole number of them, otherwise in eighths of an inch; both rounded up.</remarks>
    /// <param name="length">Zero or more.</param>
    /// <param name="system">Which units.</param>
    public static string ToBuy(Length length, MeasureSystem system) =>
        system == MeasureSystem.Imperial ? ImperialToBuy(length) : MetricToBuy(length);

    /// <summary>The usual step of a shop: 10 cm, or an eighth of a yard.</summary>
    /// <remarks>references/trade.md 2.1 ([AKC], [THREADS-TPL]).</remarks>
    public static Length UsualStep(MeasureSystem system) => system == MeasureSystem.Imperial
        ? Length.FromMicrometers(Length.MicrometersPerYard / 8)
        : Length.FromCentimeters(10);

    /// <summary>The other system.</summary>
    public static MeasureSystem Other(MeasureSystem system) =>
        system == MeasureSystem.Imperial ? MeasureSystem.Metric : MeasureSystem.Imperial;

    /// <summary>How reasons speak of lengths: tenths of a centimeter, or eighths of an inch; and the widths of cloth usual there.</summary>
    /// <remarks>Widths: references/trade.md 1.1, 36, 45, 54, 60, 72 and 108 in cloth.</remarks>
    public static LayWording WordingOf(MeasureSystem system) => system == MeasureSystem.Imperial ? ImperialWording : LayWording.Metric;

    private static LayWording ImperialWording { get; } = new(
        length => Inches(length.RoundedUpTo(Length.FromMicrometers(EighthInch)), 8),
        length => Inches(Length.FromMicrometers(length.Micrometers / EighthInch * EighthInch), 8),
        [.. new[] { 36, 45, 54, 60, 72, 108 }.Select(inches => Length.FromInches(inches))]);

    private const long EighthInch = Length.MicrometersPerInch / 8;

    private static string MetricToBuy(Length length) => length.Micrometers < MicrometersPerMeter
        ? Metric(UpTo(length, Length.MicrometersPerMillimeter) * Length.MicrometersPerMillimeter / (decimal)MicrometersPerCentimeter, "0.#", " cm")
        : Metric(UpTo(length, Length.MicrometersPerMillimeter) * Length.MicrometersPerMillimeter / (decimal)MicrometersPerMeter, "0.###", " m");

    private static string ImperialToBuy(Length length)
    {
        foreach (long partsInOne in new long[] { 8, 3 })
        {
            long part = Length.MicrometersPerYard / partsInOne;
            if (length.Micrometers % part == 0)
                return Fraction.Text(length.Micrometers / part, partsInOne) + " yd";
        }
        return Fraction.Text(UpTo(length, EighthInch), 8) + "\"";
    }

    private static string Metric(decimal amount, string format, string unit) => amount.ToString(format, CultureInfo.InvariantCulture) + unit;

    private static long UpTo(Length length, long part) => length.RoundedUpTo(Length.FromMicrometers(part)).Micrometers / part;

    private static long Nearest(Length length, decimal part) =>
        (long)Math.Round(length.Micrometers / part, MidpointRounding.AwayFromZero);
}
