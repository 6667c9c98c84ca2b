using Nestmark.Output.Fonts;

namespace Nestmark.Output.Drawings;

/// <summary>Writes text down a page, line below line, broken at blanks to fit a width.</summary>
/// <param name="drawing">Gets the lines.</param>
/// <param name="left">Left edge, millimeters.</param>
/// <param name="top">Where it starts, millimeters.</param>
/// <param name="width">Width of the column, millimeters; above zero.</param>
internal sealed class TextColumn(Drawing drawing, double left, double top, double width)
{
    private const double LeadingRatio = 1.3;

    /// <summary>Where the next line starts.</summary>
    public double YMillimeters { get; private set; } = top;

    /// <summary>Writes a paragraph.</summary>
    public void Write(string text, double sizeMillimeters, FontWeight weight = FontWeight.Regular, double indentMillimeters = 0)
    {
        foreach (string line in Wrapped(text, sizeMillimeters, weight, width - indentMillimeters))
        {
            drawing.Text(Role.Label, line, new Spot(left + indentMillimeters, YMillimeters - sizeMillimeters), sizeMillimeters, Anchor.Start, weight);
            YMillimeters -= sizeMillimeters * LeadingRatio;
        }
    }

    /// <summary>Writes a paragraph behind a dash.</summary>
    public void WritePoint(string text, double sizeMillimeters)
    {
        drawing.Text(Role.Label, "–", new Spot(left, YMillimeters - sizeMillimeters), sizeMillimeters);
        Write(text, sizeMillimeters, FontWeight.Regular, sizeMillimeters * 1.1);
    }

    /// <summary>Leaves a space.</summary>
    public void Skip(double millimeters) => YMillimeters -= millimeters;

    /// <summary>The text broken into lines; a word that is wider than the column is broken inside.</summary>
    public static IReadOnlyList<string> Wrapped(string text, double sizeMillimeters, FontWeight weight, double widthMillimeters)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in CleanText.OneLine(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && !Fits(longer))
            {
                lines.Add(line);
                longer = word;
            }
            line = longer;
            while (!Fits(line) && line.Length > 1)
            {
                int kept = 1;
                while (kept < line.Length - 1 && Fits(line[..(kept + 1)]))
                    kept++;
                if (char.IsHighSurrogate(line[kept - 1]) && kept < line.Length - 1)
                    kept++;
                lines.Add(line[..kept]);
                line = line[kept..];
            }
        }
        if (line.Length > 0)
            lines.Add(line);
        return lines;

        bool Fits(string some) => new TextLine(some, sizeMillimeters, weight).WidthMillimeters <= widthMillimeters;
    }
}
