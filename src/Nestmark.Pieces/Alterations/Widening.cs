using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Widens a piece: it is cut at a line and spread across the grain, or moved off its fold.</summary>
/// <remarks>references/trade.md 8: a half piece set x away from the fold gains 2x in all (geometry). The part away from the fold, or to the left of the arrow, moves.</remarks>
public static class Widening
{
    /// <summary>The piece widened at a line.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="line">Where it is cut; a level line lies along the grain.</param>
    /// <param name="by">On the piece as drawn; above zero.</param>
    /// <param name="truing">How the crossed edges are drawn anew.</param>
    public static AlterationResult AtLine(PieceDraft draft, AlterLine line, Length by, SideTruing truing) =>
        Trying.With(draft, by, (paper, amount) => StripParting.Open(paper, line, paper.Across, amount, truing));

    /// <summary>The half piece moved off its fold.</summary>
    /// <param name="draft">A draft on the fold that can be made into a piece.</param>
    /// <param name="by">On the half; the whole gains twice as much. Above zero.</param>
    /// <param name="truing">How the edges that end on the fold are drawn anew.</param>
    public static AlterationResult AtFold(PieceDraft draft, Length by, SideTruing truing) =>
        AtLine(draft, new LevelLine("fold", "", Length.Zero), by, truing);
}
