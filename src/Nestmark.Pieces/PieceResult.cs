using System.Collections.Immutable;

namespace Nestmark.Pieces;

/// <summary>A piece, or the faults that stand in its way.</summary>
/// <param name="Piece">The piece; <c>null</c> exactly when a fault is an error.</param>
/// <param name="Faults">All faults found, in the order of the outline.</param>
public sealed record PieceResult(Piece? Piece, ImmutableArray<PieceFault> Faults);
