using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Bench.Yield;

/// <summary>Writes runs as JSON, in the instances' own units.</summary>
internal static class YieldReport
{
    public static void Write(string path, IEnumerable<YieldRun> runs)
    {
        string temporary = path + ".part";
        using (FileStream stream = File.Create(temporary))
        using (Utf8JsonWriter writer = new(stream, new JsonWriterOptions { Indented = true }))
        {
            writer.WriteStartObject();
            writer.WriteStartArray("instances");
            foreach (YieldRun run in runs)
                WriteRun(writer, run);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        File.Move(temporary, path, overwrite: true);
    }

    private static void WriteRun(Utf8JsonWriter writer, YieldRun run)
    {
        writer.WriteStartObject();
        writer.WriteString("name", run.Task.Instance.Name);
        writer.WriteNumber("length", run.Length);
        writer.WriteNumber("density", run.Density);
        writer.WriteNumber("seconds", Math.Round(run.Seconds, 3));
        writer.WriteNumber("cpuSeconds", Math.Round(run.CpuSeconds, 3));
        writer.WriteNumber("seed", run.Seed);
        writer.WriteStartArray("placements");
        foreach (Placement placement in run.Marker.Placements)
            WritePlacement(writer, run.Task.Scale, placement);
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WritePlacement(Utf8JsonWriter writer, double scale, Placement placement)
    {
        writer.WriteStartObject();
        writer.WriteString("piece", placement.Piece.Name);
        writer.WriteNumber("copy", placement.Copy);
        writer.WriteNumber("turn_deg", placement.Turn.Angle.TotalDegrees);
        writer.WriteNumber("x", placement.Offset.X / scale);
        writer.WriteNumber("y", placement.Offset.Y / scale);
        writer.WriteStartArray("outline");
        foreach (Point point in placement.CuttingLine.Outer)
        {
            writer.WriteStartArray();
            writer.WriteNumberValue(point.X / scale);
            writer.WriteNumberValue(point.Y / scale);
            writer.WriteEndArray();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
