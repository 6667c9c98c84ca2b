using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Cuts a piece off at a line, as a long sleeve to a short one.</summary>
public static class CuttingOff
{
    /// <summary>What is left.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="line">Crosses the outline twice; a level line lies across the grain.</param>
    /// <param name="keep">A corner in the part that is kept; empty keeps the larger part.</param>
    public static AlterationResult Apply(PieceDraft draft, AlterLine line, string keep) => Trying.Once(draft, paper =>
    {
        (StraightLine found, AlterationFault? fault) = LineFinding.Find(paper, line, paper.Along);
        if (fault is not null)
            return fault;
        if (keep.Length > 0)
        {
            (PaperSide side, AlterationFault? keepFault) = CutSides.SideOf(paper, found, keep);
            return keepFault is null ? CutPart.Of(paper, found, side, EdgeTraits.Plain, 0) : keepFault;
        }
        PaperOutcome left = CutPart.Of(paper, found, PaperSide.Moving, EdgeTraits.Plain, 0);
        PaperOutcome right = CutPart.Of(paper, found, PaperSide.Still, EdgeTraits.Plain, 0);
        if (left.Paper is not { } leftPaper || right.Paper is not { } rightPaper)
            return left.Paper is null ? left : right;
        return CutSides.Area(leftPaper) > CutSides.Area(rightPaper) ? left : right;
    });
}
