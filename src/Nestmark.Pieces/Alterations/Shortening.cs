using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Shortens a piece: a strip as deep as the amount is taken out beyond a line, as by a pleat half as deep.</summary>
/// <remarks>references/trade.md 8: "shorten with a pleat half the amount deep; then true the sides" [CWU17]. The opposite of <see cref="Lengthening"/> at the same line.</remarks>
public static class Shortening
{
    /// <summary>The piece shortened.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="line">Where the strip begins; it lies beyond the line, toward the arrow's head.</param>
    /// <param name="by">Above zero.</param>
    /// <param name="truing">How the crossed edges are drawn anew.</param>
    public static AlterationResult Apply(PieceDraft draft, AlterLine line, Length by, SideTruing truing) =>
        Trying.With(draft, by, (paper, amount) => StripParting.Close(paper, line, paper.Along, amount, truing));
}
