using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Input.Quantities;

namespace Nestmark.Input;

/// <summary>Reads a list of widths of cloth: "90cm,115cm" or "36in,45in,54in".</summary>
public static class WidthList
{
    private const int Most = 12;
    private static readonly Length Least = Length.FromCentimeters(5);
    private static readonly Length Widest = Length.FromMeters(5);

    /// <summary>The widths; a width without a unit has that of the first one that follows with a unit.</summary>
    /// <param name="text">Widths from 5 cm to 5 m with commas between them, at most twelve.</param>
    public static WidthsReading Read(string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        List<Length> widths = [];
        for (int i = 0; i < parts.Length; i++)
        {
            string unit = parts.Skip(i).Select(UnitOf).FirstOrDefault(unit => unit.Length > 0) ?? "";
            string part = UnitOf(parts[i]).Length > 0 ? parts[i] : parts[i] + unit;
            Reading<Length> width = LengthText.Read(part, LengthUnit.Centimeter, LengthRange.AboveZero);
            if (unit.Length == 0 || width.Fault is not null || width.Value < Least || width.Value > Widest)
                return new WidthsReading([], $"Found the width \"{QuantityFaults.Shown(parts[i])}\"; expected widths with a unit, from 5 cm to 5 m, as 90cm,115cm,140cm or 36in,45in,60in.");
            if (!widths.Contains(width.Value))
                widths.Add(width.Value);
        }
        return widths.Count > Most
            ? new WidthsReading([], string.Create(CultureInfo.InvariantCulture, $"Found {widths.Count} widths; a chart has {Most} at most."))
            : new WidthsReading([.. widths], "");
    }

    private static string UnitOf(string part) => part.TrimStart("0123456789./ ½⅓⅔¼¾⅛⅜⅝⅞".ToCharArray());
}
