using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>Every way that a piece may lie, from the cloth's nap, the piece's grain rule, the tilt limit and the side up.</summary>
/// <remarks>
/// Nap: references/trade.md 5 (none: any half turn; one-way: all one way; by size: each size one way of its own).
/// A flipped copy turns the opposite way round, so that the nap runs over it as over the mirror image of its plain partner:
/// a pair cut across or on the bias of one-way cloth shades alike left and right, exactly as when both are cut from a folded lay.
/// For the same reason one-way bias has one turn, 45 degrees (315 flipped), and not 135 or 315 besides.
/// </remarks>
public static class AllowedTurns
{
    /// <summary>The turns of a piece that lies anywhere on the lay: exact ones first, then the tilted ones.</summary>
    /// <param name="nap">The cloth's direction rule. <see cref="Nap.BySize"/> gives both ways; the nap group does the rest.</param>
    /// <param name="grain"><see cref="GrainRule.Any"/> means any quarter turn, whatever the nap.</param>
    /// <param name="tilt">Largest deviation from the grain, 0 to 45 degrees; adds that much and half of it, both ways round.</param>
    /// <param name="facing">Side up, for every turn.</param>
    /// <exception cref="ArgumentException">The tilt lies beyond 45 degrees.</exception>
    public static ImmutableArray<Turn> For(Nap nap, GrainRule grain, Angle tilt, Facing facing)
    {
        if (tilt > Angle.FromDegrees(45))
            throw new ArgumentException("A tilt must lie within 0 to 45 degrees.", nameof(tilt));
        IEnumerable<Angle> exact = Exact(nap, grain).Select(degrees => Angle.FromDegrees(facing == Facing.Flipped ? -degrees : degrees));
        return [.. Tilted(exact.ToArray(), tilt).Distinct().Select(angle => new Turn(angle, facing))];
    }

    /// <summary>The turns of a half piece on the lengthwise fold: as it is, and mirrored end for end where half turns are allowed. No tilt.</summary>
    /// <param name="nap">The cloth's direction rule.</param>
    /// <param name="grain">Across and bias cannot lie on a lengthwise fold and give none.</param>
    public static ImmutableArray<Turn> OnFold(Nap nap, GrainRule grain)
    {
        if (grain is GrainRule.Across or GrainRule.Bias)
            return [];
        Turn endForEnd = new(Angle.Half, Facing.Flipped);
        return nap == Nap.OneWay && grain != GrainRule.Any ? [Turn.None] : [Turn.None, endForEnd];
    }

    private static double[] Exact(Nap nap, GrainRule grain) => (grain, nap) switch
    {
        (GrainRule.Any, _) => [0, 90, 180, 270],
        (GrainRule.Along, Nap.OneWay) => [0],
        (GrainRule.Along, _) => [0, 180],
        (GrainRule.Across, Nap.OneWay) => [90],
        (GrainRule.Across, _) => [90, 270],
        (_, Nap.OneWay) => [45],
        (_, Nap.BySize) => [45, 225],
        _ => [45, 135, 225, 315],
    };

    private static IEnumerable<Angle> Tilted(Angle[] exact, Angle tilt)
    {
        if (tilt == Angle.Zero)
            return exact;
        Angle half = Angle.FromDegrees(tilt.TotalDegrees / 2);
        Angle[] leans = [tilt, -tilt, half, -half];
        return exact.Concat(exact.SelectMany(angle => leans.Select(lean => angle + lean)));
    }
}
