using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Narrows a piece: a strip along the grain is taken out beyond a line, or the piece is set over its fold. The opposite of <see cref="Widening"/>.</summary>
/// <remarks>references/trade.md 8: x over the fold loses 2x in all (geometry).</remarks>
public static class Narrowing
{
    /// <summary>The piece narrowed at a line.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="line">Where the strip begins; it lies beyond the line, away from the fold or to the left of the arrow.</param>
    /// <param name="by">On the piece as drawn; above zero.</param>
    /// <param name="truing">How the crossed edges are drawn anew.</param>
    public static AlterationResult AtLine(PieceDraft draft, AlterLine line, Length by, SideTruing truing) =>
        Trying.With(draft, by, (paper, amount) => StripParting.Close(paper, line, paper.Across, amount, truing));

    /// <summary>The half piece set over its fold.</summary>
    /// <param name="draft">A draft on the fold that can be made into a piece.</param>
    /// <param name="by">On the half; the whole loses twice as much. Above zero.</param>
    /// <param name="truing">How the edges that end on the fold are drawn anew.</param>
    public static AlterationResult AtFold(PieceDraft draft, Length by, SideTruing truing) =>
        AtLine(draft, new LevelLine("fold", "", Length.Zero), by, truing);
}
