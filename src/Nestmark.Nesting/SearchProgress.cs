using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>News from a running search.</summary>
/// <param name="BestLayLength">Length of the best complete marker so far.</param>
/// <param name="Steps">Search steps done by all threads.</param>
public sealed record SearchProgress(Length BestLayLength, long Steps);
