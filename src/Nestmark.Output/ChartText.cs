using System.Text;
using Nestmark.Output.Charts;
using Nestmark.Yardage.Charts;

namespace Nestmark.Output;

/// <summary>A chart as plain text, for the screen and for chart.txt.</summary>
public static class ChartText
{
    /// <summary>The text: title, a table for each cloth and nap, reasons, how the lengths come about.</summary>
    public static string Of(Chart chart)
    {
        ChartSheetText words = ChartSheetText.Of(chart);
        StringBuilder text = new();
        text.Append(chart.Job.Title).Append('\n');
        foreach (ChartBlock block in words.Blocks)
            Append(text.Append('\n'), block);
        for (int i = 0; i < words.Reasons.Length; i++)
            text.Append(i == 0 ? "\n" : "").Append(System.Globalization.CultureInfo.InvariantCulture, $"({i + 1}) {words.Reasons[i]}\n");
        text.Append('\n');
        foreach (string sentence in words.Basis)
            text.Append(sentence).Append('\n');
        return text.ToString();
    }

    /// <summary>The file's bytes: the text, and the tag of the job in its last line.</summary>
    public static byte[] Write(Chart chart) => Encoding.UTF8.GetBytes($"{Of(chart)}\n{JobOrigin.Of(chart.Job)}\n");

    private static void Append(StringBuilder text, ChartBlock block)
    {
        int first = block.Rows.Select(row => row.Size.Length).Append("size".Length).Max();
        int meters = block.Rows.SelectMany(row => row.Cells).Select(cell => cell.Meters.Length).Append("m".Length).Max();
        int yards = block.Rows.SelectMany(row => row.Cells).Select(cell => cell.Yards.Length).Append("yd".Length).Max();
        int width = Math.Max(meters + 2 + yards, block.Widths.Max(words => words.Length));
        yards = width - 2 - meters;
        text.Append(block.Heading).Append('\n');
        Line(text, "", first, block.Widths.Select(words => words.PadLeft(width)));
        Line(text, "size", first, block.Widths.Select(_ => "m".PadLeft(meters) + "  " + "yd".PadLeft(yards)));
        foreach (ChartRow row in block.Rows)
            Line(text, row.Size, first, row.Cells.Select(cell => cell.Meters.PadLeft(meters) + "  " + cell.Yards.PadLeft(yards)));
    }

    private static void Line(StringBuilder text, string head, int headWidth, IEnumerable<string> cells) =>
        text.Append((head.PadRight(headWidth) + string.Concat(cells.Select(cell => "   " + cell))).TrimEnd()).Append('\n');
}
