namespace Nestmark.Nesting;

/// <summary>A point that the user names.</summary>
/// <param name="Piece">Name of the piece.</param>
/// <param name="Point">Name of the point, as <see cref="Pieces.PiecePoints"/> knows it.</param>
public sealed record MatchPoint(string Piece, string Point);
