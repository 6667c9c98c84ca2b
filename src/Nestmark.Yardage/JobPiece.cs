using Nestmark.Pieces;

namespace Nestmark.Yardage;

/// <summary>A piece and the cloth it is cut from.</summary>
/// <param name="Piece">One piece in one size; a piece that serves every size has an empty size and stands once.</param>
/// <param name="Cloth">Name of a cloth of the job.</param>
/// <param name="Where">Where the user's file describes it.</param>
public sealed record JobPiece(Piece Piece, string Cloth, Place Where);
