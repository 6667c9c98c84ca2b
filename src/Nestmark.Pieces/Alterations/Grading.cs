using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Makes a size from the base size by the offsets of its corners; edges, notches, lines and marks follow. Allowances are not graded.</summary>
/// <remarks>references/trade.md 8: allowances are not graded (common practice). Inside lines follow by mean value coordinates.</remarks>
public static class Grading
{
    /// <summary>The piece in a size.</summary>
    /// <param name="draft">The base size, as read; it can be made into a piece.</param>
    /// <param name="table">The offsets.</param>
    /// <param name="size">One of the table's sizes.</param>
    public static AlterationResult Apply(PieceDraft draft, GradeTable table, string size) => Trying.Once(draft with { Size = size }, paper =>
    {
        foreach ((string corner, _) in table.Corners)
        {
            if (paper.Corner(corner) is null)
                return AlterationFaults.NoSuchCorner(corner, paper.Letters);
            if (table.OffsetOf(corner, size) is null)
                return AlterationFaults.GradeLost(size);
        }
        return CornerMoves.WithInside(paper, letter => ShiftOf(table.OffsetOf(letter, size)!.Value, paper));
    });

    private static Vector ShiftOf(CornerOffset offset, Paper paper) =>
        offset.Along.Micrometers * paper.Along + offset.Across.Micrometers * paper.Across;
}
