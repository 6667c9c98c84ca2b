using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Yardage.Saving;

/// <summary>Pieces cut in two, one trial for each that the job lets be joined by a seam.</summary>
internal static class PiecedTrials
{
    /// <summary>The trials of one cloth. A piece that the print ties keeps its shape, since its points would lie on either part.</summary>
    /// <param name="job">The job with that cloth alone.</param>
    /// <param name="before">Its plan.</param>
    public static IEnumerable<Trial> Of(Job job, ClothPlan before) => job.Pieces
        .Where(piece => piece.Piece.PiecedAllowance is not null && !job.Matches.Any(rule => rule.First.Piece == piece.Piece.Name || rule.Second?.Piece == piece.Piece.Name))
        .GroupBy(piece => piece.Piece.Name)
        .Where(sizes => sizes.Any(piece => InTwo(piece).Length == 2))
        .Select(sizes => Divided(job, before, sizes.Key, sizes.First().Piece.PiecedAllowance!.Value));

    private static Trial Divided(Job job, ClothPlan before, string name, Length allowance) => new(
        SavingKind.Pieced, $"cut {name} in two", before,
        job with { Pieces = [.. job.Pieces.SelectMany(piece => piece.Piece.Name == name ? InTwo(piece) : [piece])] },
        _ => $"a seam across {name}, with {LengthWords.Tape(allowance, job.System)} on both joined edges");

    /// <summary>Both parts; or the piece as it is where it cannot be divided.</summary>
    private static ImmutableArray<JobPiece> InTwo(JobPiece piece)
    {
        ImmutableArray<Piece> parts = Piecing.InTwo(piece.Piece, piece.Piece.PiecedAllowance!.Value);
        return parts.IsEmpty ? [piece] : [.. parts.Select(part => piece with { Piece = part, Draft = null })];
    }
}
