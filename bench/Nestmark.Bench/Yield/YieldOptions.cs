namespace Nestmark.Bench.Yield;

/// <summary>What was asked for on the command line.</summary>
internal sealed record YieldOptions(string Data, double Seconds, int Threads, long Seed, int Seeds, IReadOnlySet<string> Only, string Out);
