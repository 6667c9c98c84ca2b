using System.Collections.Immutable;
using Nestmark.Pieces;
using Nestmark.Pieces.Seams;

namespace Nestmark.Yardage.Seams;

/// <summary>Walks every seam of a job, size by size.</summary>
public static class SeamReports
{
    /// <summary>The reports in the order of the file, each seam by size. Sides whose edges are not there are left out; the reader has said so.</summary>
    /// <param name="job">The job, its pieces as altered.</param>
    public static ImmutableArray<SeamReport> Of(Job job) => [.. job.Seams.SelectMany(seam => Of(job, seam))];

    private static IEnumerable<SeamReport> Of(Job job, JobSeam seam)
    {
        string[] names = [.. seam.Seam.First.Concat(seam.Seam.Second).Where(term => term.IsRun).Select(term => term.Piece)];
        JobPiece[] pieces = [.. job.Pieces.Where(piece => names.Contains(piece.Piece.Name))];
        bool bySize = pieces.Any(piece => piece.Piece.Size.Length > 0);
        foreach (string size in bySize ? job.Sizes.Select(count => count.Size) : [""])
        {
            if (Walk(seam, name => Find(pieces, name, size)?.Piece) is not { } walk)
                continue;
            bool altered = pieces.Any(piece => piece.Before is not null);
            yield return new SeamReport(seam, size, walk, altered ? Walk(seam, name => Original(Find(pieces, name, size))) : null);
        }
    }

    private static SeamWalk? Walk(JobSeam seam, Func<string, Piece?> find) =>
        SideWalk.Of(seam.Seam.First, find) is { } first && SideWalk.Of(seam.Seam.Second, find) is { } second
            ? SeamWalking.Walk(seam.Seam, first, second)
            : null;

    private static JobPiece? Find(JobPiece[] pieces, string name, string size) =>
        Array.Find(pieces, piece => piece.Piece.Name == name && (piece.Piece.Size.Length == 0 || piece.Piece.Size == size));

    private static Piece? Original(JobPiece? piece) => piece?.Before ?? piece?.Piece;
}
