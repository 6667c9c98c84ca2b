using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Yardage;

/// <summary>An allowance of a piece, in all its sizes, that the job lets be narrower where cloth is short.</summary>
/// <param name="Piece">Name of the piece.</param>
/// <param name="Least">Which allowance, and the least that still serves.</param>
/// <param name="Now">What it is otherwise; more than the least.</param>
public sealed record NarrowerAllowance(string Piece, LeastAllowance Least, Length Now);
