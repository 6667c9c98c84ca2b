namespace Nestmark.Bench.Trace;

/// <summary>Best length over time of one run.</summary>
/// <param name="Instance">Name of the instance.</param>
/// <param name="Seed">Seed of the run.</param>
/// <param name="LeastLength">Length at a density of 1: total area ÷ strip width.</param>
/// <param name="Points">In the order of time, the last one at the end of the run.</param>
internal sealed record TraceLine(string Instance, long Seed, double LeastLength, IReadOnlyList<TracePoint> Points);
