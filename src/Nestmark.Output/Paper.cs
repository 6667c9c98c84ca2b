using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Output;

/// <summary>What the marker is printed on: sheets of a size, or a roll of a width.</summary>
/// <remarks>Sheet sizes: ISO 216 (A series) and ANSI/ASME Y14.1 (letter, tabloid); legal is common practice, no standard.</remarks>
public sealed record Paper
{
    private static readonly (string Name, double Short, double Long)[] Sheets =
    [
        ("a4", 210, 297), ("a3", 297, 420), ("a2", 420, 594), ("a1", 594, 841), ("a0", 841, 1189),
        ("letter", 215.9, 279.4), ("legal", 215.9, 355.6), ("tabloid", 279.4, 431.8),
    ];

    private Paper(string name, Length width, Length? height) => (Name, Width, Height) = (name, width, height);

    /// <summary>A4 sheets.</summary>
    public static Paper A4 { get; } = Sheet("a4");

    /// <summary>US letter sheets.</summary>
    public static Paper Letter { get; } = Sheet("letter");

    /// <summary>The name by which it is asked for: "a4", "roll:914mm".</summary>
    public string Name { get; }

    /// <summary>The short side of a sheet; the width of a roll.</summary>
    public Length Width { get; }

    /// <summary>The long side of a sheet; <c>null</c> for a roll.</summary>
    public Length? Height { get; }

    /// <summary>What can be asked for, in words.</summary>
    public static string Choices => string.Join(", ", Sheets.Select(sheet => sheet.Name)) + ", roll:914mm, roll:91.4cm, roll:36in (any width from 200 mm to 5 m)";

    /// <summary>A paper by name, capitals or not.</summary>
    /// <param name="text">As the user wrote it.</param>
    /// <returns>The paper, or a message that lists what exists.</returns>
    public static PaperReading Read(string text)
    {
        string name = text.Trim().ToLowerInvariant();
        if (Array.Exists(Sheets, sheet => sheet.Name == name))
            return new PaperReading(Sheet(name), "");
        if (name.StartsWith("roll:", StringComparison.Ordinal) && WidthOf(name["roll:".Length..]) is Length width)
            return new PaperReading(new Paper(name, width, null), "");
        return new PaperReading(null, $"There is no paper \"{text.Trim()}\". There are: {Choices}.");
    }

    private static Paper Sheet(string name)
    {
        (_, double shortSide, double longSide) = Array.Find(Sheets, sheet => sheet.Name == name);
        return new Paper(name, Length.FromMillimeters(shortSide), Length.FromMillimeters(longSide));
    }

    private static Length? WidthOf(string text)
    {
        (string Unit, double Millimeters)[] units = [("mm", 1), ("cm", 10), ("in", 25.4), ("\"", 25.4)];
        foreach ((string unit, double millimeters) in units)
        {
            if (!text.EndsWith(unit, StringComparison.Ordinal))
                continue;
            string number = text[..^unit.Length].Trim();
            bool read = double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value);
            return read && value * millimeters is >= 200 and <= 5000 ? Length.FromMillimeters(value * millimeters) : null;
        }
        return null;
    }
}
