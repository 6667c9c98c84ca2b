using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>A point of a piece in one size.</summary>
/// <param name="Piece">Name of the piece.</param>
/// <param name="Place">In the coordinates of the piece.</param>
public sealed record TiedPoint(string Piece, Point Place);
