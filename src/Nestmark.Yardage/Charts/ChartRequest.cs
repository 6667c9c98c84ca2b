using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Yardage.Charts;

/// <summary>What a chart is to show.</summary>
/// <param name="Cloths">Names of cloths of the job, each once.</param>
/// <param name="Sizes">Sizes of the job, each once; one empty text for a job without sizes.</param>
/// <param name="Widths">Full widths of cloth, above zero, each once.</param>
/// <param name="Naps">Direction rules, each once.</param>
/// <param name="Effort">What the search for each cell may take, on one thread; the threads are cells searched at the same time.</param>
public sealed record ChartRequest(
    ImmutableArray<string> Cloths, ImmutableArray<string> Sizes, ImmutableArray<Length> Widths, ImmutableArray<Nap> Naps, Effort Effort);
