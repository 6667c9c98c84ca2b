namespace Nestmark.Bench.Trace;

/// <summary>Writes traces as PREFIX.csv and PREFIX.svg.</summary>
internal static class TraceFiles
{
    public static void Write(string prefix, IReadOnlyList<TraceLine> lines)
    {
        File.WriteAllText(prefix + ".csv", TraceCsv.Of(lines));
        TracePlot.Of(lines).Save(prefix + ".svg");
    }
}
