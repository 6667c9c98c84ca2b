using System.Collections.Immutable;

namespace Nestmark.Nesting;

/// <summary>What went on cloth of a given size.</summary>
/// <param name="Marker">Its marker, verified.</param>
/// <param name="LeftOut">Indices of the demands without a place, rising; empty when everything fits.</param>
public sealed record Fit(Marker Marker, ImmutableArray<int> LeftOut);
