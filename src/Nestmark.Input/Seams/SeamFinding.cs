using System.Collections.Immutable;
using Nestmark.Pieces;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input.Seams;

/// <summary>Looks every seam up on the finished pieces and says which edges or notches are not there.</summary>
internal static class SeamFinding
{
    /// <summary>The seams whose edges are there in every size; the others are reported, unless their pieces were.</summary>
    /// <param name="draft">The job as read.</param>
    /// <param name="pieces">Its pieces as made and altered.</param>
    public static ImmutableArray<JobSeam> Found(JobDraft draft, ImmutableArray<JobPiece> pieces) =>
        [.. draft.Seams.Where(seam => Sizes(draft, pieces, seam).All(size => IsThere(draft, pieces, seam, size)))];

    /// <summary>The sizes in which a seam is walked: one empty size when no piece of it has sizes.</summary>
    public static IEnumerable<string> Sizes(JobDraft draft, ImmutableArray<JobPiece> pieces, JobSeam seam)
    {
        string[] names = [.. seam.Seam.First.Concat(seam.Seam.Second).Select(term => term.Piece)];
        return pieces.Any(piece => piece.Piece.Size.Length > 0 && names.Contains(piece.Piece.Name)) ? draft.Sizes.Select(size => size.Size) : [""];
    }

    /// <summary>The fault of a run on a piece, or <c>null</c>.</summary>
    public static Fault? RunFault(Piece piece, SeamTerm term)
    {
        if (EdgeRun.Find(piece, term.Corners) is not null)
            return null;
        string edges = string.Join(", ", piece.Edges.Take(30).Select(edge => edge.Name));
        return SeamFaults.NoSuchRun(piece.Title, string.Join("-", term.Corners), edges);
    }

    private static bool IsThere(JobDraft draft, ImmutableArray<JobPiece> pieces, JobSeam seam, string size)
    {
        bool isThere = true;
        foreach (SeamTerm term in seam.Seam.First.Concat(seam.Seam.Second).Where(term => term.IsRun))
        {
            Piece? piece = Find(pieces, term.Piece, size);
            Fault? fault = piece is null ? MissingFault(draft, pieces, term, size) : RunFault(piece, term) ?? FoldFault(piece, term);
            if (fault is not null)
                draft.Context.Problems.Add(Severity.Error, seam.Where, fault);
            isThere &= piece is not null && fault is null;
        }
        return isThere && HasZone(draft, pieces, seam, size);
    }

    /// <summary>A piece that stands in the file and could not be made has been reported already.</summary>
    private static Fault? MissingFault(JobDraft draft, ImmutableArray<JobPiece> pieces, SeamTerm term, string size)
    {
        string[] names = [.. draft.PieceNames];
        if (!names.Contains(term.Piece))
            return SeamFaults.UnknownPiece(term.Piece, names);
        return pieces.Any(piece => piece.Piece.Name == term.Piece) ? SeamFaults.NoSize(term.Piece, size) : null;
    }

    private static Fault? FoldFault(Piece piece, SeamTerm term)
    {
        PieceEdge? fold = EdgeRun.Find(piece, term.Corners)!.Edges.FirstOrDefault(edge => edge.Kind == EdgeKind.Fold);
        return fold is null ? null : SeamFaults.RunOnFold(piece.Title, fold.Name);
    }

    private static bool HasZone(JobDraft draft, ImmutableArray<JobPiece> pieces, JobSeam seam, string size)
    {
        if (seam.Seam.TakeUp is not { } takeUp)
            return true;
        ImmutableArray<SeamTerm> terms = takeUp.Side == SeamSide.First ? seam.Seam.First : seam.Seam.Second;
        SideWalk side = SideWalk.Of(terms, name => Find(pieces, name, size))!;
        ZoneEnd[] missing = [.. new[] { takeUp.From, takeUp.To }.OfType<ZoneEnd>().Where(end => side.AlongMillimeters(end) is null)];
        foreach (ZoneEnd end in missing)
        {
            string[] notches = [.. side.Notches.Select((notch, i) => notch.Name.Length > 0 ? notch.Name : FormattableString.Invariant($"notch {i + 1}"))];
            string text = end.Notch.Length > 0 ? end.Notch : FormattableString.Invariant($"notch {end.Number}");
            draft.Context.Problems.Add(Severity.Error, seam.Where, SeamFaults.NoSuchNotch(text, Spelling.ListOf(notches)));
        }
        return missing.Length == 0;
    }

    private static Piece? Find(ImmutableArray<JobPiece> pieces, string name, string size) =>
        pieces.FirstOrDefault(piece => piece.Piece.Name == name && (piece.Piece.Size.Length == 0 || piece.Piece.Size == size))?.Piece;
}
