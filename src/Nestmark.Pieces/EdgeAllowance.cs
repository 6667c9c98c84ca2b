using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>The seam allowance of one edge, named by its corner letters in counter-clockwise order.</summary>
/// <param name="From">Letter of the corner where the edge starts.</param>
/// <param name="To">Letter of the next corner counter-clockwise.</param>
/// <param name="Width">From seam line out to cutting line; zero or more.</param>
/// <param name="Ends">How it ends at both corners.</param>
public sealed record EdgeAllowance(string From, string To, Length Width, AllowanceEnds Ends);
