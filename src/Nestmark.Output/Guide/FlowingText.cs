using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Guide;

/// <summary>Lists of sentences that run on over as many pages as they need.</summary>
/// <param name="widthMillimeters">Width of the lines; above zero.</param>
/// <param name="sizeMillimeters">Font size.</param>
internal sealed class FlowingText(double widthMillimeters, double sizeMillimeters)
{
    private const double LeadingRatio = 1.3;

    private readonly Queue<Line> _lines = new();

    /// <summary>Whether nothing is left to draw.</summary>
    public bool IsEmpty => _lines.Count == 0;

    // RoomMillimeters: what must be free below the line before. A heading asks for room for a line of its list too.
    private sealed record Line(string Sign, string Text, double Indent, double Size, FontWeight Weight, double RoomMillimeters);

    /// <summary>Adds a list behind those before; nothing when it has no sentences.</summary>
    public void Add(string heading, IEnumerable<string> sentences)
    {
        double indent = sizeMillimeters * 1.1;
        double leading = sizeMillimeters * LeadingRatio;
        bool isFirst = true;
        foreach (string sentence in sentences)
        {
            if (isFirst)
                _lines.Enqueue(new Line("", heading, 0, sizeMillimeters * 1.15, FontWeight.Bold, 3 * leading));
            isFirst = false;
            string sign = "–";
            foreach (string text in TextColumn.Wrapped(sentence, sizeMillimeters, FontWeight.Regular, widthMillimeters - indent))
            {
                _lines.Enqueue(new Line(sign, text, indent, sizeMillimeters, FontWeight.Regular, leading));
                sign = "";
            }
        }
    }

    /// <summary>Draws the lines that the room down to <paramref name="bottomMillimeters"/> holds, one at least, and takes them off the list.</summary>
    public void DrawPage(Drawing page, Spot topLeft, double bottomMillimeters)
    {
        double y = topLeft.YMillimeters;
        do
        {
            Line line = _lines.Dequeue();
            Spot at = new(topLeft.XMillimeters, y - line.Size);
            if (line.Sign.Length > 0)
                page.Text(Role.Label, line.Sign, at, line.Size);
            page.Text(Role.Label, line.Text, at.Moved(line.Indent, 0), line.Size, Anchor.Start, line.Weight);
            y -= line.Size * LeadingRatio;
        }
        while (_lines.TryPeek(out Line? next) && y - next.RoomMillimeters >= bottomMillimeters);
    }
}
