using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Alterations;
using Nestmark.Pieces;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input.Seams;

/// <summary>Walks every seam after each alteration and tells which alterations broke or mended it.</summary>
/// <remarks>
/// Pieces drafted from measures are made after all alterations, so a seam with one of them has no history. Neither has a seam before its edges are there,
/// as of pieces that are split or joined first.
/// </remarks>
internal sealed class SeamTurns
{
    private readonly AlterHistory _history;
    private readonly Dictionary<PieceDraft, Piece?> _made = new(ReferenceEqualityComparer.Instance);

    private SeamTurns(AlterHistory history) => _history = history;

    /// <summary>The seams with what became of them.</summary>
    /// <param name="draft">The job as read.</param>
    /// <param name="seams">Its seams, their edges there.</param>
    /// <param name="pieces">Its pieces as made.</param>
    public static ImmutableArray<JobSeam> Told(JobDraft draft, ImmutableArray<JobSeam> seams, ImmutableArray<JobPiece> pieces)
    {
        if (draft.History.Stages.IsEmpty)
            return seams;
        SeamTurns turns = new(draft.History);
        return [.. seams.Select(seam => seam with { Turns = [.. SeamFinding.Sizes(draft, pieces, seam).SelectMany(size => turns.Of(seam.Seam, size))] })];
    }

    private IEnumerable<SeamTurn> Of(Seam seam, string size)
    {
        SeamVerdict? before = Walk(seam, size, _history.Start)?.Verdict;
        foreach (AlterStage stage in _history.Stages)
        {
            SeamWalk? after = Walk(seam, size, stage.Pieces);
            bool isApart = after?.Verdict == SeamVerdict.Apart;
            if (after is not null && before is not null && isApart != (before == SeamVerdict.Apart))
                yield return new SeamTurn(size, isApart ? SeamTurnKind.Broken : SeamTurnKind.Mended, stage.Alteration, after.Difference, stage.Where);
            before = after?.Verdict;
        }
    }

    private SeamWalk? Walk(Seam seam, string size, ImmutableArray<DraftedPiece> pieces) =>
        SideWalk.Of(seam.First, name => Find(pieces, name, size)) is { } first && SideWalk.Of(seam.Second, name => Find(pieces, name, size)) is { } second
            ? SeamWalking.Walk(seam, first, second)
            : null;

    private Piece? Find(ImmutableArray<DraftedPiece> pieces, string name, string size)
    {
        PieceDraft? draft = pieces.FirstOrDefault(piece => piece.Draft.Name == name && (piece.Draft.Size.Length == 0 || piece.Draft.Size == size))?.Draft;
        if (draft is null)
            return null;
        if (!_made.TryGetValue(draft, out Piece? piece))
        {
            piece = PieceMaking.Make(WithoutAllowances(draft)).Piece;
            _made.Add(draft, piece);
        }
        return piece;
    }

    /// <summary>Only the seam line is walked. Where the outline is the cutting line the allowances lead to it.</summary>
    private static PieceDraft WithoutAllowances(PieceDraft draft) =>
        draft.Meaning == OutlineMeaning.SeamLine ? draft with { Seam = Length.Zero, Edges = [] } : draft;
}
