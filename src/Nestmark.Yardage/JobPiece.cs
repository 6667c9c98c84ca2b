using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Yardage;

/// <summary>A piece and the cloth it is cut from. A piece that is cut from several cloths stands once for each.</summary>
/// <param name="Piece">One piece in one size; a piece that serves every size has an empty size and stands once.</param>
/// <param name="Cloth">Name of a cloth of the job.</param>
/// <param name="Where">Where the user's file describes it.</param>
public sealed record JobPiece(Piece Piece, string Cloth, Place Where)
{
    /// <summary>The piece as it was read, before any alteration, with its allowances; <c>null</c> when nothing was altered.</summary>
    public Piece? Before { get; init; }

    /// <summary>Moves <see cref="Before"/> over <see cref="Piece"/>, so that what no alteration has moved lies on itself.</summary>
    public Point BeforeShift { get; init; }

    /// <summary>What the alterations did, in their order; empty when nothing was altered.</summary>
    public ImmutableArray<PieceChange> Changes { get; init; } = [];

    /// <summary>What the piece was made from, for trying it otherwise; <c>null</c> when it is not known.</summary>
    public PieceDraft? Draft { get; init; }
}
