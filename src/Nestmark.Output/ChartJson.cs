using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Charts;
using Nestmark.Yardage.Charts;

namespace Nestmark.Output;

/// <summary>A chart as JSON for other programs.</summary>
public static class ChartJson
{
    /// <summary>The file's bytes, UTF-8; the same chart gives the same bytes.</summary>
    public static byte[] Write(Chart chart)
    {
        using MemoryStream file = new();
        using (Utf8JsonWriter json = new(file, JsonFile.Options))
            WriteChart(json, chart);
        file.WriteByte((byte)'\n');
        return file.ToArray();
    }

    private static void WriteChart(Utf8JsonWriter json, Chart chart)
    {
        json.WriteStartObject();
        json.WriteNumber("nestmark", 1);
        JsonFile.WriteText(json, "title", chart.Job.Title);
        json.WriteNumber("seed", chart.Request.Effort.Seed);
        json.WriteNumber("secondsPerCell", chart.Request.Effort.Seconds ?? 0);
        if (chart.Request.Effort.Steps is long steps)
            json.WriteNumber("stepsPerCell", steps);
        else
            json.WriteNull("stepsPerCell");
        json.WriteBoolean("complete", chart.IsComplete);
        json.WriteStartArray("cells");
        foreach (ChartEntry entry in chart.Entries)
            WriteEntry(json, entry);
        json.WriteEndArray();
        JsonFile.WriteText(json, "source", chart.Job.Source);
        json.WriteString("origin", JobOrigin.Of(chart.Job));
        json.WriteEndObject();
    }

    private static void WriteEntry(Utf8JsonWriter json, ChartEntry entry)
    {
        json.WriteStartObject();
        JsonFile.WriteText(json, "cloth", entry.Cell.Cloth);
        JsonFile.WriteText(json, "size", entry.Cell.Size);
        json.WriteString("nap", JsonFile.NapKey(entry.Cell.Nap));
        JsonFile.WriteLength(json, "width_mm", entry.Cell.Width);
        json.WriteBoolean("canBeCut", entry.CanBeCut);
        JsonFile.WriteLength(json, "layLength_mm", entry.Finding.LayLength);
        json.WriteNumber("efficiency", Math.Round(entry.Finding.EfficiencyRatio, 6));
        JsonFile.WriteLength(json, "beforeWash_mm", entry.BeforeWash);
        WriteAmount(json, "metric", entry.Metric, ChartSheetText.Meters(entry.Metric) + " m", entry.CanBeCut);
        WriteAmount(json, "imperial", entry.Imperial, ChartSheetText.Yards(entry.Imperial) + " yd", entry.CanBeCut);
        json.WriteStartObject("laidAs");
        JsonFile.WriteLength(json, "width_mm", entry.LaidAs.Width);
        json.WriteString("nap", JsonFile.NapKey(entry.LaidAs.Nap));
        json.WriteEndObject();
        json.WriteStartArray("unplaced");
        foreach (Unplaced unplaced in entry.Finding.Unplaced)
            JsonFile.WriteUnplaced(json, unplaced);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteAmount(Utf8JsonWriter json, string key, Length length, string text, bool canBeCut)
    {
        if (!canBeCut)
        {
            json.WriteNull(key);
            return;
        }
        json.WriteStartObject(key);
        JsonFile.WriteLength(json, "length_mm", length);
        JsonFile.WriteText(json, "text", text);
        json.WriteEndObject();
    }
}
