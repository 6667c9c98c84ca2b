using Nestmark.Bench.Yield;
using Nestmark.Nesting;
using Nestmark.Yardage;

namespace Nestmark.Bench.Trace;

/// <summary>Collects the news of one run.</summary>
internal sealed class Tracing(ClockStop clock, double micrometersPerUnit)
{
    private readonly List<TracePoint> _points = [];

    /// <summary>Takes news; one call at a time. Lengths that are not shorter than the last are left out.</summary>
    public void Add(SearchProgress progress)
    {
        double length = progress.BestLayLength.Micrometers / micrometersPerUnit;
        if (_points.Count == 0 || length < _points[^1].Length)
            _points.Add(new TracePoint(clock.ElapsedSeconds, progress.Steps, length));
    }

    /// <summary>The trace, with the finished marker at its end.</summary>
    public TraceLine Close(Instance instance, long seed, double finalLength)
    {
        long steps = _points.Count > 0 ? _points[^1].Steps : 0;
        return new TraceLine(instance.Name, seed, instance.TotalArea / instance.StripWidth, [.. _points, new TracePoint(clock.ElapsedSeconds, steps, finalLength)]);
    }
}
