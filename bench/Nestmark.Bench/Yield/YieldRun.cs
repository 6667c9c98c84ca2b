using Nestmark.Bench.Trace;
using Nestmark.Nesting;

namespace Nestmark.Bench.Yield;

/// <summary>One instance searched once.</summary>
internal sealed record YieldRun(InstanceTask Task, long Seed, Marker Marker, double Seconds, double CpuSeconds, TraceLine Trace)
{
    public double Length => Marker.LayLength.Micrometers / Task.Scale;

    public double Density => Task.Instance.TotalArea / (Task.Instance.StripWidth * Length);
}
