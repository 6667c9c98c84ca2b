using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>The run of seam line between two neighboring corners, counter-clockwise.</summary>
/// <param name="From">Letter of the corner where it starts.</param>
/// <param name="To">Letter of the next corner.</param>
/// <param name="SeamLineLength">Length along the seam line.</param>
/// <param name="Allowance">Seam allowance outside it; zero on the fold edge.</param>
/// <param name="Kind">Seam or fold.</param>
public sealed record PieceEdge(string From, string To, Length SeamLineLength, Length Allowance, EdgeKind Kind)
{
    /// <summary>The edge's name, as "A-B".</summary>
    public string Name => From + "-" + To;
}
