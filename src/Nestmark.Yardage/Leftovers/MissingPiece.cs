namespace Nestmark.Yardage;

/// <summary>Copies of a piece that found no place on the leftovers.</summary>
/// <param name="Title">Piece and size.</param>
/// <param name="Copies">How many.</param>
/// <param name="Reason">Why, a sentence; whether it is certain or only not found is said in it.</param>
public sealed record MissingPiece(string Title, int Copies, string Reason);
