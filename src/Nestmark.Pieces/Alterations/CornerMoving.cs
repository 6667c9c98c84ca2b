using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Moves one corner; both edges that end there follow evenly. What is drawn inside stays.</summary>
public static class CornerMoving
{
    /// <summary>The piece with the corner moved.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="corner">Its letter.</param>
    /// <param name="along">Along the grain, toward the arrow's head; below zero away from it.</param>
    /// <param name="across">Across the grain, away from the fold or to the left of the arrow.</param>
    public static AlterationResult Apply(PieceDraft draft, string corner, Length along, Length across) =>
        Shifts.Try(draft, along, across, (paper, shift) => paper.Corner(corner) is null
            ? AlterationFaults.NoSuchCorner(corner, paper.Letters)
            : CornerMoves.Of(paper, letter => letter == corner ? shift : default));
}
