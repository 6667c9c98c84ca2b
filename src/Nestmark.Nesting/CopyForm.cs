using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>How one placement of a piece is laid, before its turns are known.</summary>
/// <param name="Piece">The piece as laid: a half for the fold, or unfolded.</param>
/// <param name="Facing">Side up.</param>
/// <param name="Layers">Layers of cloth that it cuts.</param>
/// <param name="Contact">Whether it lies on the fold.</param>
internal sealed record CopyForm(Piece Piece, Facing Facing, int Layers, FoldContact Contact)
{
    /// <summary>The placements that one garment asks for.</summary>
    /// <param name="surface">The lay; on a folded one copies come two at a time.</param>
    /// <param name="piece">A piece whose cut instruction this lay can carry out.</param>
    public static ImmutableArray<CopyForm> ForOneGarment(LaySurface surface, Piece piece)
    {
        int count = piece.Cut.Count;
        return (surface.HasFold, piece.Cut.Kind) switch
        {
            (true, CutKind.OnFold) => Repeated(count, new CopyForm(piece, Facing.Plain, 2, FoldContact.OnFold)),
            (true, CutKind.Pairs) => Repeated(count, new CopyForm(piece, Facing.Plain, 2, FoldContact.Free)),
            (true, _) => Repeated(count / 2, new CopyForm(piece, Facing.Plain, 2, FoldContact.Free)),
            (false, CutKind.OnFold) => Repeated(count, Single(Unfolding.Unfold(piece), Facing.Plain)),
            (false, CutKind.Pairs) => Repeated(count, Single(piece, Facing.Plain), Single(piece, Facing.Flipped)),
            (false, _) => Repeated(count, Single(piece, Facing.Plain)),
        };
    }

    /// <summary>Every way that this copy may lie, whether or not it fits.</summary>
    public ImmutableArray<Turn> Turns(Cloth cloth) => Contact == FoldContact.OnFold
        ? AllowedTurns.OnFold(cloth.Nap, Piece.Grain)
        : AllowedTurns.For(cloth.Nap, Piece.Grain, Piece.Tilt ?? cloth.Tilt, Facing);

    private static CopyForm Single(Piece piece, Facing facing) => new(piece, facing, 1, FoldContact.Free);

    private static ImmutableArray<CopyForm> Repeated(int times, params CopyForm[] forms) =>
        [.. Enumerable.Range(0, times).SelectMany(_ => forms)];
}
