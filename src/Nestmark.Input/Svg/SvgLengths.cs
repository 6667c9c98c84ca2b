using System.Xml.Linq;

namespace Nestmark.Input.Svg;

/// <summary>Numbers and lengths of attributes.</summary>
/// <remarks>CSS Values: 1 in = 96 px = 72 pt = 6 pc = 25.4 mm, 1 Q = 1/40 cm; references/formats.md 3.1.</remarks>
internal static class SvgLengths
{
    public const double MillimetersPerPixel = 25.4 / 96;

    /// <summary>Millimeters in an absolute unit other than px; <c>null</c> for any other word.</summary>
    public static double? MillimetersIn(string unit) => unit switch
    {
        "mm" => 1,
        "cm" => 10,
        "in" => 25.4,
        "pt" => 25.4 / 72,
        "pc" => 25.4 / 6,
        "Q" => 0.25,
        _ => null,
    };

    /// <summary>A length in user units; the fallback when the attribute is missing. Inner units are CSS lengths in the local system.</summary>
    public static Reading<double> InUserUnits(XElement element, string attribute, double fallback)
    {
        string? text = element.Attribute(attribute)?.Value;
        if (text is null)
            return new(fallback, null);
        SvgScanner scanner = new(text.Trim());
        if (scanner.Number() is not double number || !(Math.Abs(number) <= SvgLimits.LargestNumber))
            return new(0, SvgFaults.BadNumber(attribute, text));
        string unit = scanner.Letters();
        if (!scanner.IsAtEnd)
            return new(0, SvgFaults.BadNumber(attribute, text));
        if (unit is "" or "px")
            return new(number, null);
        return MillimetersIn(unit) is double millimeters
            ? new(number * millimeters / MillimetersPerPixel, null)
            : new(0, SvgFaults.RelativeUnit(attribute, text));
    }

    /// <summary>A size in millimeters when it is written in an absolute unit other than px and above zero; otherwise <c>null</c>.</summary>
    public static double? TrueSize(string? text)
    {
        SvgScanner scanner = new(text?.Trim() ?? "");
        if (scanner.Number() is not (> 0 and < SvgLimits.LargestNumber and double number))
            return null;
        double? unit = MillimetersIn(scanner.Letters());
        return scanner.IsAtEnd ? number * unit : null;
    }

    /// <summary>A list of numbers, or <c>null</c> when something else is among them.</summary>
    public static double[]? Numbers(string text)
    {
        SvgScanner scanner = new(text);
        List<double> numbers = [];
        scanner.SkipBlanks();
        while (!scanner.IsAtEnd)
        {
            if (scanner.Number() is not double number || !(Math.Abs(number) <= SvgLimits.LargestNumber))
                return null;
            numbers.Add(number);
            scanner.SkipSeparator();
        }
        return [.. numbers];
    }
}
