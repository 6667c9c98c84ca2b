using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>How narrow an allowance may become where cloth is short.</summary>
/// <param name="Edge">The edge by its letters, as "A-B"; empty for every edge without an allowance of its own.</param>
/// <param name="Width">The least that still serves; zero or more.</param>
public sealed record LeastAllowance(string Edge, Length Width);
