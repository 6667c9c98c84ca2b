using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>A piece to cut for a number of garments of one size.</summary>
/// <param name="Piece">The piece, in that size or serving every size.</param>
/// <param name="Size">The size; may be empty.</param>
/// <param name="Garments">1 or more.</param>
public sealed record PieceOrder(Piece Piece, string Size, int Garments)
{
    /// <summary>How the print holds it; <c>null</c> when nothing is to match.</summary>
    public PrintHold? Hold { get; init; }
}
