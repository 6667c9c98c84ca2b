namespace Nestmark.Bench.Yield;

/// <summary>What was asked for on the command line.</summary>
/// <param name="Data">Folder of instances.</param>
/// <param name="Seconds">Seconds a run.</param>
/// <param name="Clock">Which clock the seconds are read from.</param>
/// <param name="Threads">Threads a run.</param>
/// <param name="Seed">First seed.</param>
/// <param name="Seeds">Number of seeds.</param>
/// <param name="Only">Names of instances; empty for all.</param>
/// <param name="Tuning">Numbers of the search to change, as "Name=value".</param>
/// <param name="Out">File for the results; empty for none.</param>
/// <param name="Trace">Beginning of the names of two files for the best length over time; empty for none.</param>
internal sealed record YieldOptions(
    string Data, double Seconds, ClockKind Clock, int Threads, long Seed, int Seeds,
    IReadOnlySet<string> Only, IReadOnlyList<string> Tuning, string Out, string Trace);
