using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Yardage;

namespace Nestmark.Output.Words;

/// <summary>Lengths as a tape measure shows them: centimeters to the millimeter, or inches to the sixteenth.</summary>
internal static class TapeText
{
    private const int Sixteenths = 16;

    /// <summary>The unit: "cm" or "in".</summary>
    public static string Unit(MeasureSystem system) => system == MeasureSystem.Metric ? "cm" : "in";

    /// <summary>The number alone, to the nearest mark of the tape: "12.3", or "4 7/8".</summary>
    public static string Number(Length length, MeasureSystem system) => system == MeasureSystem.Metric
        ? Centimeters(length).ToString("0.0", CultureInfo.InvariantCulture)
        : Inches(length);

    /// <summary>Number and unit, without a closing zero: "12.3 cm", "12 cm".</summary>
    public static string Full(Length length, MeasureSystem system) =>
        (system == MeasureSystem.Metric ? Centimeters(length).ToString("0.#", CultureInfo.InvariantCulture) : Inches(length)) + " " + Unit(system);

    /// <summary>In both systems, the job's own first: "140 cm (55 1/8 in)".</summary>
    public static string Both(Length length, MeasureSystem system)
    {
        MeasureSystem other = system == MeasureSystem.Metric ? MeasureSystem.Imperial : MeasureSystem.Metric;
        return $"{Full(length, system)} ({Full(length, other)})";
    }

    private static decimal Centimeters(Length length) => Math.Round(length.Micrometers / 1000m, MidpointRounding.AwayFromZero) / 10;

    private static string Inches(Length length)
    {
        long count = (long)Math.Round(length.Micrometers * (decimal)Sixteenths / Length.MicrometersPerInch, MidpointRounding.AwayFromZero);
        string sign = count < 0 ? "-" : "";
        count = Math.Abs(count);
        long whole = count / Sixteenths;
        long top = count % Sixteenths;
        long bottom = Sixteenths;
        while (top != 0 && top % 2 == 0)
            (top, bottom) = (top / 2, bottom / 2);
        string fraction = top == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{top}/{bottom}");
        string number = whole == 0 && top != 0 ? "" : whole.ToString(CultureInfo.InvariantCulture);
        return sign + number + (number.Length > 0 && fraction.Length > 0 ? " " : "") + fraction;
    }
}
