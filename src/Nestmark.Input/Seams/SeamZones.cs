using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input.Seams;

/// <summary>Draws the zones of gathers, pleats and ease on the pieces of a job.</summary>
internal static class SeamZones
{
    /// <summary>The pieces, those with a zone marked.</summary>
    /// <param name="draft">The job as read.</param>
    /// <param name="pieces">Its pieces.</param>
    /// <param name="seams">Seams whose edges are there.</param>
    public static ImmutableArray<JobPiece> Drawn(JobDraft draft, ImmutableArray<JobPiece> pieces, ImmutableArray<JobSeam> seams)
    {
        JobPiece[] marked = [.. pieces];
        foreach (JobSeam seam in seams.Where(IsDrawn))
        {
            foreach (string size in SeamFinding.Sizes(draft, pieces, seam))
                Draw(seam.Seam, seam.Seam.TakeUp!, size, marked, draft.Context.System);
        }
        return [.. marked];
    }

    /// <summary>Ease over a whole edge needs no marks.</summary>
    private static bool IsDrawn(JobSeam seam) => seam.Seam.Marks == ZoneMarks.Drawn
        && seam.Seam.TakeUp is { } takeUp && (takeUp.Kind != TakeUpKind.Ease || takeUp.From is not null || takeUp.To is not null);

    private static void Draw(Seam seam, TakeUp takeUp, string size, JobPiece[] pieces, MeasureSystem system)
    {
        SideWalk first = SideWalk.Of(seam.First, name => At(pieces, name, size)?.Piece)!;
        SideWalk second = SideWalk.Of(seam.Second, name => At(pieces, name, size)?.Piece)!;
        SeamWalk walk = SeamWalking.Walk(seam, first, second);
        (Length from, Length to) = walk.Zone!.Value;
        string verb = takeUp.Kind switch { TakeUpKind.Ease => "ease", TakeUpKind.Gather => "gather", _ => "pleat" };
        string label = $"{verb} to {LengthWords.Tape(to - from - walk.TakenUp, system)}";
        (ImmutableArray<SeamTerm> taken, ImmutableArray<SeamTerm> other) = takeUp.Side == SeamSide.First ? (seam.First, seam.Second) : (seam.Second, seam.First);
        MarkSide(taken, from.TotalMillimeters, to.TotalMillimeters, label, size, pieces);
        MarkSide(other, from.TotalMillimeters, (to - walk.TakenUp).TotalMillimeters, "", size, pieces);
    }

    private static void MarkSide(ImmutableArray<SeamTerm> terms, double fromMillimeters, double toMillimeters, string label, string size, JobPiece[] pieces)
    {
        double walked = 0;
        foreach (SeamTerm term in terms)
        {
            int index = term.IsRun ? Array.FindIndex(pieces, piece => IsFor(piece, term.Piece, size)) : -1;
            EdgeRun? run = index < 0 ? null : EdgeRun.Find(pieces[index].Piece, term.Corners);
            double length = term.Times * (run?.LengthMillimeters ?? term.Plain.TotalMillimeters);
            double from = Math.Max(0, fromMillimeters - walked);
            double to = Math.Min(run?.LengthMillimeters ?? 0, toMillimeters - walked);
            if (run is not null && from < to)
                pieces[index] = pieces[index] with { Piece = ZoneMarking.Marked(run, from, to, label) };
            walked += length;
        }
    }

    private static JobPiece? At(JobPiece[] pieces, string name, string size) => Array.Find(pieces, piece => IsFor(piece, name, size));

    private static bool IsFor(JobPiece piece, string name, string size) =>
        piece.Piece.Name == name && (piece.Piece.Size.Length == 0 || piece.Piece.Size == size);
}
