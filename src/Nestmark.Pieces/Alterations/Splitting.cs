using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Splits a piece at a line into two, with a seam allowance on both sides of the new seam.</summary>
public static class Splitting
{
    /// <summary>The two parts.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="line">Crosses the outline twice; a level line lies across the grain.</param>
    /// <param name="corner">A corner in the first part.</param>
    /// <param name="otherCorner">A corner in the other part.</param>
    /// <param name="seam">Allowance of the new seam on both parts.</param>
    /// <returns>
    /// The first part, then the other, both with the name of the whole; or one result with the fault.
    /// The ends of the new seam have the same letters on both. A part that no longer reaches the fold is cut in pairs.
    /// </returns>
    public static ImmutableArray<AlterationResult> Apply(PieceDraft draft, AlterLine line, string corner, string otherCorner, Length seam)
    {
        AlterationResult first = Part(draft, line, corner, otherCorner, seam, 0);
        AlterationResult second = Part(draft, line, otherCorner, corner, seam, 1);
        return first.Fault is not null ? [first] : second.Fault is not null ? [second] : [first, second];
    }

    private static AlterationResult Part(PieceDraft draft, AlterLine line, string corner, string otherCorner, Length seam, int startNumber)
    {
        AlterationResult part = Trying.Once(draft, paper =>
        {
            (StraightLine found, AlterationFault? fault) = LineFinding.Find(paper, line, paper.Along);
            if (fault is not null)
                return fault;
            (PaperSide side, AlterationFault? cornerFault) = CutSides.SideOf(paper, found, corner);
            (PaperSide otherSide, AlterationFault? otherFault) = CutSides.SideOf(paper, found, otherCorner);
            if ((cornerFault ?? otherFault) is { } misplaced)
                return misplaced;
            return side == otherSide
                ? AlterationFaults.SamePart(corner, otherCorner)
                : CutPart.Of(paper, found, side, new EdgeTraits(seam, AllowanceEnds.Mitred, EdgeKind.Cut), startNumber);
        });
        return part.Draft is { FoldEdge: "" } offFold && draft.Cut.Kind == CutKind.OnFold
            ? part with
            {
                Draft = offFold with { Cut = draft.Cut with { Kind = CutKind.Pairs } },
                Notes = [$"The part at corner {corner} does not reach the fold; it is cut {(draft.Cut with { Kind = CutKind.Pairs }).ToString()}."],
            }
            : part;
    }
}
