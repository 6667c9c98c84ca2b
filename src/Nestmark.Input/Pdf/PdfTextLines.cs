using System.Collections.Immutable;
using Nestmark.Geometry.Curves;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Nestmark.Input.Pdf;

/// <summary>Puts words that stand beside each other together to lines. Text that is turned stays single words.</summary>
internal static class PdfTextLines
{
    private const double SameLineRatio = 0.4;
    private const double WordGapRatio = 1.2;

    /// <summary>The lines of a page.</summary>
    /// <param name="page">The page.</param>
    /// <param name="unit">Millimeters in a unit of the page.</param>
    public static ImmutableArray<PdfWords> Of(Page page, double unit)
    {
        List<(string Text, PdfRectangle Box)> lines = [];
        IEnumerable<Word> words = page.GetWords()
            .Where(word => word.Text.Trim().Length > 0)
            .OrderByDescending(word => Math.Round(word.BoundingBox.Bottom / 2)).ThenBy(word => word.BoundingBox.Left);
        foreach (Word word in words)
        {
            if (lines.Count > 0 && Continues(lines[^1].Box, word.BoundingBox))
                lines[^1] = (lines[^1].Text + " " + word.Text, Around(lines[^1].Box, word.BoundingBox));
            else
                lines.Add((word.Text, word.BoundingBox));
        }
        return
        [
            .. lines.Select(line => new PdfWords(line.Text, new CurvePoint((line.Box.Left + line.Box.Right) / 2 * unit, (line.Box.Bottom + line.Box.Top) / 2 * unit)))
                .Where(line => line.Middle.IsUsable),
        ];
    }

    private static bool Continues(PdfRectangle line, PdfRectangle word)
    {
        double height = Math.Max(line.Height, word.Height);
        double gap = word.Left - line.Right;
        return Math.Abs(word.Bottom - line.Bottom) <= SameLineRatio * height && gap >= -0.5 * height && gap <= WordGapRatio * height;
    }

    private static PdfRectangle Around(PdfRectangle left, PdfRectangle right) =>
        new(left.Left, Math.Min(left.Bottom, right.Bottom), Math.Max(left.Right, right.Right), Math.Max(left.Top, right.Top));
}
