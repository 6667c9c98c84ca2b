using System.Globalization;
using System.Text;

namespace Nestmark.Bench.Trace;

/// <summary>Traces as a table: one row for each better lay.</summary>
internal static class TraceCsv
{
    public static string Of(IEnumerable<TraceLine> lines)
    {
        StringBuilder text = new("instance,seed,seconds,steps,length,density\n");
        foreach (TraceLine line in lines)
        {
            foreach (TracePoint point in line.Points)
                text.Append(CultureInfo.InvariantCulture, $"{line.Instance},{line.Seed},{point.Seconds:0.000},{point.Steps},{point.Length:0.######},{line.LeastLength / point.Length:0.000000}\n");
        }
        return text.ToString();
    }
}
