using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Lengthens a piece: it is cut at a line and spread along the grain by the whole amount.</summary>
/// <remarks>references/trade.md 8: "lengthen by cutting and spreading the full amount; then true the sides" [CWU17]. The part toward the arrow's head moves.</remarks>
public static class Lengthening
{
    /// <summary>The piece lengthened.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="line">Where it is cut; a level line lies across the grain.</param>
    /// <param name="by">Above zero.</param>
    /// <param name="truing">How the crossed edges are drawn anew.</param>
    public static AlterationResult Apply(PieceDraft draft, AlterLine line, Length by, SideTruing truing) =>
        Trying.With(draft, by, (paper, amount) => StripParting.Open(paper, line, paper.Along, amount, truing));
}
