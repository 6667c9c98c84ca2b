using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>One copy of a piece on the lay. Its points are those of the piece, turned, then moved by <see cref="Offset"/>.</summary>
/// <param name="Piece">The piece as laid: a half on the fold, or unfolded on open cloth.</param>
/// <param name="Size">The size it is cut for; empty where the job has none.</param>
/// <param name="Copy">Counts the copies of this piece and size, from 1.</param>
/// <param name="Layers">Layers of cloth that it cuts.</param>
/// <param name="Contact">Whether its fold edge lies on the fold.</param>
/// <param name="Turn">Side up and turn.</param>
/// <param name="Offset">Where the piece's origin lies, micrometers.</param>
public sealed record Placement(Piece Piece, string Size, int Copy, int Layers, FoldContact Contact, Turn Turn, Point Offset)
{
    /// <summary>The cutting line as it lies on the lay.</summary>
    public Polygon CuttingLine => Piece.CuttingLine.Mapped(Map);

    /// <summary>Where a point of the piece lies on the lay.</summary>
    public Point Map(Point ofPiece) => Turn.Apply(ofPiece) + Offset;
}
