using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A lettered corner of the seam line. Letters run counter-clockwise from the lowest corner as drawn, the leftmost of several: A … Z, AA, AB …</summary>
public sealed record PieceCorner(string Letter, Point Place);
