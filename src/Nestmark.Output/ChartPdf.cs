using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Output.Charts;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Guide;
using Nestmark.Output.Pdf;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Output;

/// <summary>A chart to print: a table for each cloth and nap, sizes down, widths across, in meters and yards.</summary>
public static class ChartPdf
{
    private const double Margin = 12;
    private const double Size = 3;
    private const double Between = 5;
    private const int WidthsAcross = 5;

    /// <summary>The file's bytes. A4 for metric jobs and US letter for others, as many pages as the tables need.</summary>
    public static byte[] Write(Chart chart)
    {
        Paper paper = chart.Job.System == MeasureSystem.Metric ? Paper.A4 : Paper.Letter;
        ChartSheetText words = ChartSheetText.Of(chart);
        List<PdfSheet> sheets = [];
        double width = paper.Width.TotalMillimeters;
        double height = paper.Height!.Value.TotalMillimeters;
        Drawing page = NewPage();
        double top = Heading(page, chart, width, height);
        foreach ((string heading, Table table) in words.Blocks.SelectMany(TablesOf))
        {
            Table rest = table;
            while (rest.Rows.Length > 0)
            {
                double room = top - Margin - 2 * Size;
                int rows = Math.Min(rest.Rows.Length, Table.RowsWithin(room, Size));
                if (rows < Math.Min(3, rest.Rows.Length) || room < 8 * Size)
                {
                    page = NewPage();
                    top = Heading(page, chart, width, height);
                    continue;
                }
                page.Text(Role.Label, FittedText.Cut(heading, Size * 1.2, FontWeight.Bold, width - 2 * Margin), new Spot(Margin, top - Size), Size * 1.2, Anchor.Start, FontWeight.Bold);
                top = (rest with { Rows = [.. rest.Rows.Take(rows)] }).Draw(page, new Spot(Margin, top - 1.5 * Size), width - 2 * Margin, Size) - Between;
                rest = rest with { Rows = [.. rest.Rows.Skip(rows)] };
            }
        }
        FlowingText text = new(width - 2 * Margin, Size);
        text.Add("Cannot be cut", words.Reasons.Select((reason, i) => string.Create(CultureInfo.InvariantCulture, $"({i + 1}) {reason}")));
        text.Add("How the lengths come about", words.Basis);
        while (!text.IsEmpty)
        {
            if (top < Margin + 4 * Size)
            {
                page = NewPage();
                top = Heading(page, chart, width, height);
            }
            text.DrawPage(page, new Spot(Margin, top), Margin);
            top = 0;
        }
        return PdfFile.Write(sheets, chart.Job.Title + " – cloth required", JobOrigin.Of(chart.Job));

        Drawing NewPage()
        {
            Drawing next = new();
            sheets.Add(new PdfSheet("Cloth required", width, height, next));
            return next;
        }
    }

    private static double Heading(Drawing page, Chart chart, double width, double height)
    {
        TextColumn column = new(page, Margin, height - Margin, width - 2 * Margin);
        column.Write(FittedText.Cut(chart.Job.Title, 5, FontWeight.Bold, width - 2 * Margin), 5, FontWeight.Bold);
        column.Write("Cloth required for one garment", Size * 1.1);
        return column.YMillimeters - Between;
    }

    // More widths than fit side by side go into tables of their own.
    private static IEnumerable<(string Heading, Table Table)> TablesOf(ChartBlock block)
    {
        for (int first = 0; first < block.Widths.Length; first += WidthsAcross)
        {
            int count = Math.Min(WidthsAcross, block.Widths.Length - first);
            double share = 0.88 / Math.Max(count, 3) / 2;
            ImmutableArray<TableColumn> columns =
            [
                new("", "Size", 0.12, Anchor.Start),
                .. Enumerable.Range(first, count).SelectMany(i => new TableColumn[] { new(block.Widths[i], "m", share * 1.1, Anchor.End), new(block.Widths[i], "yd", share * 0.9, Anchor.End) }),
            ];
            int from = first;
            ImmutableArray<ImmutableArray<string>> rows =
            [
                .. block.Rows.Select(row => ImmutableArray.CreateRange(
                    row.Cells.Skip(from).Take(count).SelectMany(cell => new[] { cell.Meters, cell.Yards }).Prepend(row.Size))),
            ];
            yield return (block.Heading, new Table(columns, rows));
        }
    }
}
