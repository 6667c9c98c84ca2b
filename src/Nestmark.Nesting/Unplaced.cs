namespace Nestmark.Nesting;

/// <summary>A piece that cannot lie on this lay, and why.</summary>
/// <param name="Piece">Name of the piece.</param>
/// <param name="Size">Its size; may be empty.</param>
/// <param name="Reason">Why not, and what would help; a sentence or two.</param>
public sealed record Unplaced(string Piece, string Size, string Reason);
