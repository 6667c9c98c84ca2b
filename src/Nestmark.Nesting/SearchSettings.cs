using Nestmark.Nesting.Search;

namespace Nestmark.Nesting;

/// <summary>How a search runs.</summary>
/// <param name="Seed">Any number; the same seed, steps and threads give the same marker.</param>
/// <param name="Threads">1 or more.</param>
/// <param name="Stop">When it ends.</param>
/// <param name="Report">Called with news, from any thread, one call at a time.</param>
/// <param name="Cancellation">Ends the search at once; the best marker so far is kept.</param>
public sealed record SearchSettings(
    long Seed, int Threads, StopRule Stop, Action<SearchProgress> Report, CancellationToken Cancellation)
{
    /// <summary>Counts what the search does, for measuring it; <c>null</c> where nobody asks.</summary>
    internal SearchEffort? Effort { get; init; }
}
