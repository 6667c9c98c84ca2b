using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>Lengths in words, the same in every output: to the sixteenth of an inch where a tape measures a place, to the eighth where cloth is bought.</summary>
public static class LengthWords
{
    private const long MicrometersPerMeter = 1_000_000;
    private const long MicrometersPerCentimeter = 10_000;
    private const int Eighths = 8;
    private const int Sixteenths = 16;
    private const long EighthInch = Length.MicrometersPerInch / Eighths;
    private static readonly long[] PartsOfYard = [8, 3];

    /// <summary>A measure for a tape: "31.4 cm" to the millimeter, or <c>12 3/16"</c> to the sixteenth of an inch; rounded to the nearest, half away from zero.</summary>
    /// <param name="length">Zero or more; below zero a minus sign goes before it.</param>
    /// <param name="system">Which units.</param>
    public static string Tape(Length length, MeasureSystem system) => system == MeasureSystem.Imperial
        ? Inches(length, Sixteenths)
        : Metric(Centimeters(length), "0.#", " cm");

    /// <summary>As <see cref="Tape"/>, in both systems, the job's own first: <c>140 cm (55 1/8")</c>.</summary>
    public static string TapeInBoth(Length length, MeasureSystem system) => $"{Tape(length, system)} ({Tape(length, Other(system))})";

    /// <summary>The number of <see cref="Tape"/> alone, for a column of measures: always with a decimal, as "12.0", or "4 7/16".</summary>
    public static string TapeNumber(Length length, MeasureSystem system) => system == MeasureSystem.Imperial
        ? Parts(length, Sixteenths)
        : Metric(Centimeters(length), "0.0", "");

    /// <summary>What the numbers of <see cref="TapeNumber"/> count: "cm" or "inches".</summary>
    public static string TapeUnit(MeasureSystem system) => system == MeasureSystem.Imperial ? "inches" : "cm";

    /// <summary>The step by which a shop sells: "10 cm", "1/8 yd". In the units in which it is a whole measure, those of the job before the others.</summary>
    /// <param name="step">Above zero.</param>
    /// <param name="system">The job's units.</param>
    public static string Step(Length step, MeasureSystem system) =>
        ToBuy(step, IsWhole(step, system) || !IsWhole(step, Other(system)) ? system : Other(system));

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
        length => Inches(length.RoundedUpTo(Length.FromMicrometers(EighthInch)), Eighths),
        length => Inches(Length.FromMicrometers(length.Micrometers / EighthInch * EighthInch), Eighths),
        [.. new[] { 36, 45, 54, 60, 72, 108 }.Select(inches => Length.FromInches(inches))]);

    private static string MetricToBuy(Length length) => length.Micrometers < MicrometersPerMeter
        ? Metric(UpTo(length, Length.MicrometersPerMillimeter) * Length.MicrometersPerMillimeter / (decimal)MicrometersPerCentimeter, "0.#", " cm")
        : Metric(UpTo(length, Length.MicrometersPerMillimeter) * Length.MicrometersPerMillimeter / (decimal)MicrometersPerMeter, "0.###", " m");

    private static string ImperialToBuy(Length length)
    {
        foreach (long partsInOne in PartsOfYard)
        {
            long part = Length.MicrometersPerYard / partsInOne;
            if (length.Micrometers % part == 0)
                return Fraction.Text(length.Micrometers / part, partsInOne) + " yd";
        }
        return Fraction.Text(UpTo(length, EighthInch), Eighths) + "\"";
    }

    private static bool IsWhole(Length length, MeasureSystem system) => system == MeasureSystem.Imperial
        ? length.Micrometers % EighthInch == 0 || PartsOfYard.Any(parts => length.Micrometers % (Length.MicrometersPerYard / parts) == 0)
        : length.Micrometers % Length.MicrometersPerMillimeter == 0;

    private static string Inches(Length length, int partsInOne) => Parts(length, partsInOne) + "\"";

    private static string Parts(Length length, int partsInOne)
    {
        long parts = Nearest(length, Length.MicrometersPerInch / (decimal)partsInOne);
        return (parts < 0 ? "-" : "") + Fraction.Text(Math.Abs(parts), partsInOne);
    }

    private static decimal Centimeters(Length length) => Nearest(length, Length.MicrometersPerMillimeter) / 10m;

    private static string Metric(decimal amount, string format, string unit) => amount.ToString(format, CultureInfo.InvariantCulture) + unit;

    private static long UpTo(Length length, long part) => length.RoundedUpTo(Length.FromMicrometers(part)).Micrometers / part;

    private static long Nearest(Length length, decimal part) =>
        (long)Math.Round(length.Micrometers / part, MidpointRounding.AwayFromZero);
}
