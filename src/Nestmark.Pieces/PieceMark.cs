using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A place marked on a piece: a button, a dart point, a pocket corner.</summary>
/// <param name="Label">Text beside it; may be empty.</param>
/// <param name="Place">Where.</param>
public sealed record PieceMark(string Label, Point Place);
