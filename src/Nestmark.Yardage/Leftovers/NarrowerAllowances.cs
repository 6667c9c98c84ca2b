using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Yardage;

/// <summary>The allowances that a job lets be narrower where cloth is short, and the job with some of them at their least.</summary>
internal static class NarrowerAllowances
{
    /// <summary>Those of the pieces of a cloth, in the order of the job.</summary>
    public static ImmutableArray<NarrowerAllowance> Of(Job job, Cloth cloth) =>
        [.. job.Pieces.Where(piece => piece.Cloth == cloth.Name).SelectMany(Of).Distinct()];

    /// <summary>The job with some of them at their least; pieces of other cloths stay as they are.</summary>
    public static Job With(Job job, Cloth cloth, ImmutableArray<NarrowerAllowance> chosen) => chosen.IsEmpty
        ? job
        : job with { Pieces = [.. job.Pieces.Select(piece => piece.Cloth == cloth.Name ? Narrowed(piece, chosen) : piece)] };

    private static IEnumerable<NarrowerAllowance> Of(JobPiece piece)
    {
        foreach (LeastAllowance least in piece.Draft?.Least ?? [])
        {
            if (AllowanceNarrowing.Now(piece.Draft!, piece.Piece, least) is Length now && now > least.Width)
                yield return new NarrowerAllowance(piece.Piece.Name, least, now);
        }
    }

    private static JobPiece Narrowed(JobPiece piece, ImmutableArray<NarrowerAllowance> chosen)
    {
        LeastAllowance[] least = [.. chosen.Where(one => one.Piece == piece.Piece.Name).Select(one => one.Least).Distinct()];
        return least.Length > 0 && piece.Draft is { } draft && AllowanceNarrowing.Of(draft, piece.Piece, least) is { } made ? piece with { Piece = made } : piece;
    }
}
