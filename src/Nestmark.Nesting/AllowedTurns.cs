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

    /// <summary>The turns of a half piece on the folds of a lay, without tilt.</summary>
    /// <param name="surface">The lay: the near fold takes a half as it is, and mirrored end for end where half turns are allowed; the far fold the same upside down.</param>
    /// <param name="nap">The direction rule that the piece follows.</param>
    /// <param name="grain">Along or any on a fold along the cloth; across or any on a fold across it; else no turn.</param>
    /// <remarks>On a fold across the cloth the layers' naps run against each other, so only pieces without a direction lie there.</remarks>
    public static ImmutableArray<Turn> OnFold(LaySurface surface, Nap nap, GrainRule grain)
    {
        bool eitherWay = nap != Nap.OneWay || grain == GrainRule.Any;
        List<Turn> turns = [];
        foreach (LayFold fold in surface.Folds)
        {
            if (fold.Side == FoldSide.Begin && grain is GrainRule.Across or GrainRule.Any && nap == Nap.None)
                turns.AddRange([Turn.By(Angle.FromDegrees(270)), new Turn(Angle.FromDegrees(90), Facing.Flipped)]);
            if (fold.Side == FoldSide.Begin || grain is GrainRule.Across or GrainRule.Bias)
                continue;
            turns.Add(fold.Side == FoldSide.Near ? Turn.None : new Turn(Angle.Zero, Facing.Flipped));
            if (eitherWay)
                turns.Add(fold.Side == FoldSide.Near ? new Turn(Angle.Half, Facing.Flipped) : Turn.By(Angle.Half));
        }
        return [.. turns];
    }

    /// <summary>The direction rule of a piece on a cloth: the cloth's, unless the piece is an exception. An uneven print is one-way (references/trade.md 5, [TS-LAY], [GW-108]).</summary>
    public static Nap NapFor(Cloth cloth, Piece piece) => piece.Direction switch
    {
        DirectionRule.EitherWay => Nap.None,
        DirectionRule.OneWay => Nap.OneWay,
        _ when cloth.Repeat is { Balance: PrintBalance.Uneven } => Nap.OneWay,
        _ => cloth.Nap,
    };

    /// <summary>How the grainline of a piece lies on a cloth: turned across where a knit stretches the other way than the piece must.</summary>
    public static GrainRule GrainFor(Cloth cloth, Piece piece)
    {
        if (cloth.Stretch == ClothStretch.Alike || piece.Stretch == StretchRule.AnyWay || piece.Grain == GrainRule.Bias)
            return piece.Grain;
        bool asDrawn = (cloth.Stretch == ClothStretch.Across) == (piece.Stretch == StretchRule.AcrossGrain);
        return (asDrawn, piece.Grain) switch
        {
            (true, GrainRule.Across) => GrainRule.Across,
            (false, GrainRule.Across) => GrainRule.Along,
            (true, _) => GrainRule.Along,
            _ => GrainRule.Across,
        };
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
