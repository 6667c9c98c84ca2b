using System.Globalization;
using System.Text;
using Nestmark.Output.Charts;
using Nestmark.Yardage.Charts;

namespace Nestmark.Output;

/// <summary>A chart as comma-separated values, one line a cell, for spreadsheets.</summary>
/// <remarks>RFC 4180: lines end in CR LF, texts with commas, quotes or line ends stand in quotes. Decimal points.</remarks>
public static class ChartCsv
{
    /// <summary>The file's bytes, UTF-8.</summary>
    public static byte[] Write(Chart chart)
    {
        StringBuilder text = new("title,cloth,size,nap,width_mm,lay_length_mm,efficiency,buy_m,buy_yd,yards,reason,origin\r\n");
        string origin = JobOrigin.Of(chart.Job);
        foreach (ChartEntry entry in chart.Entries)
            text.AppendJoin(',', Fields(chart, entry, origin).Select(Quoted)).Append("\r\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static string[] Fields(Chart chart, ChartEntry entry, string origin)
    {
        string[] amounts = entry.CanBeCut
            ? [
                Number(entry.Finding.LayLength.Micrometers / 1000m), Number((decimal)Math.Round(entry.Finding.EfficiencyRatio, 4)),
                Number(entry.Metric.Micrometers / 1_000_000m), Number(Math.Round(entry.Imperial.Micrometers / 914_400m, 4)), ChartSheetText.Yards(entry.Imperial), "",
            ]
            : ["", "", "", "", "", string.Join(" ", entry.Finding.Unplaced.Select(unplaced => unplaced.Reason))];
        return [chart.Job.Title, entry.Cell.Cloth, entry.Cell.Size, ChartSheetText.NapWords(entry.Cell.Nap), Number(entry.Cell.Width.Micrometers / 1000m), .. amounts, origin];
    }

    private static string Number(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny(",\"\r\n") < 0 ? field : "\"" + field.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
