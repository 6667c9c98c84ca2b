using System.Globalization;
using Nestmark.Input.Outlines;
using Nestmark.Yardage;

namespace Nestmark.Input.Dxf;

/// <summary>What one unit of a drawing is worth.</summary>
/// <remarks>Sources: references/formats.md 2.3 ($INSUNITS), 1.5 (UNITS text, from memory; to be checked against the standard). Nothing is guessed.</remarks>
internal static class DxfUnits
{
    /// <summary>Millimeters in a unit, or <c>null</c> after an error when the file does not say it.</summary>
    /// <param name="content">The drawing.</param>
    /// <param name="said">The value of its UNITS text; empty without one.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="settings">The job's unit for the drawing goes before what the drawing says.</param>
    public static double? MillimetersIn(DxfContent content, string said, DxfProblems problems, DrawingSettings settings)
    {
        double? ofText = OfText(said);
        double? ofHeader = OfCode(content.Header.GetValueOrDefault("$INSUNITS", ""));
        if (settings.UnitMillimeters is double given)
        {
            if ((ofText ?? ofHeader) is double drawn && drawn != given)
                settings.Note("unit", DxfFaults.UnitOfJob(given, drawn));
            return given;
        }
        if (said.Length > 0 && ofText is null)
            problems.Note(0, "", DxfFaults.UnknownUnits(said));
        if (ofText is not null && ofHeader is not null && ofText != ofHeader)
            problems.Note(0, "", DxfFaults.UnitsDiffer(said, ofHeader.Value));
        if ((ofText ?? ofHeader) is double known)
            return known;
        if (OfMeasurement(content.Header.GetValueOrDefault("$MEASUREMENT", "")) is double likely)
        {
            problems.Note(0, "", DxfFaults.UnitsOfMeasurement(likely == 1 ? "millimeters" : "inches"));
            return likely;
        }
        problems.Add(Severity.Error, 0, "", DxfFaults.NoUnits(settings.File));
        return null;
    }

    private static double? OfText(string said) => said.ToUpperInvariant() switch
    {
        "ENGLISH" or "IMPERIAL" or "INCH" or "INCHES" or "IN" => 25.4,
        "METRIC" or "MM" or "MILLIMETER" or "MILLIMETERS" => 1,
        "CM" or "CENTIMETER" or "CENTIMETERS" => 10,
        _ => null,
    };

    private static double? OfMeasurement(string code) => code switch { "0" => 25.4, "1" => 1, _ => null };

    private static double? OfCode(string code) => !int.TryParse(code, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) ? null : number switch
    {
        1 => 25.4,
        2 => 304.8,
        4 => 1,
        5 => 10,
        6 => 1000,
        8 => 25.4e-6,
        9 => 25.4e-3,
        10 => 914.4,
        13 => 1e-3,
        14 => 100,
        _ => null,
    };
}
