using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Raises or lowers a seam on one of the pieces that share it, along the grain.</summary>
/// <remarks>
/// references/trade.md 8: a raised or lowered waist seam changes bodice and skirt by opposite amounts (common practice); the caller moves the seam
/// outward on the pieces on one side of it, and inward by as much on those on the other.
/// </remarks>
public static class SeamMoving
{
    /// <summary>An edge nearer to the grain's direction than this has no way up: 10 degrees.</summary>
    private static readonly double LeastSine = Angle.FromDegrees(10).SineRatio;

    /// <summary>The piece with its seam moved.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="edge">The seam's edge, as "A-B".</param>
    /// <param name="outward">Along the grain, outward of the piece; below zero inward.</param>
    /// <param name="keeping">Whether the sides keep their line or the seam its length.</param>
    public static AlterationResult Apply(PieceDraft draft, string edge, Length outward, SeamKeeping keeping) => Trying.With(draft, outward, (paper, amount) =>
    {
        int index = paper.IndexOf(edge);
        if (index < 0)
            return AlterationFaults.NoSuchEdge(edge, paper.EdgeNames);
        PaperEdge seam = paper.Edges[index];
        double rise = (seam.End - seam.Start).Unit.Right.Dot(paper.Along);
        if (Math.Abs(rise) < LeastSine)
            return AlterationFaults.SeamAlongGrain(seam.Name);
        Vector shift = Math.Sign(rise) * amount.Micrometers * paper.Along;
        return keeping == SeamKeeping.Length
            ? CornerMoves.Of(paper, letter => letter == seam.From || letter == seam.To ? shift : default)
            : EdgeShifting.AlongSides(paper, index, shift);
    });
}
