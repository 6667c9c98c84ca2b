using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>How one placement of a piece is laid, before its turns are known.</summary>
/// <param name="Piece">The piece as laid: a half for the fold, or unfolded.</param>
/// <param name="Facing">Side up.</param>
/// <param name="Layers">Layers of cloth that it cuts.</param>
/// <param name="Contact">Whether it lies on a fold.</param>
internal sealed record CopyForm(Piece Piece, Facing Facing, int Layers, FoldContact Contact)
{
    /// <summary>The ways to cut what all garments of an order ask for, the one to try first in front; none when the lay cannot give it.</summary>
    /// <param name="surface">The lay; through two layers copies come two at a time.</param>
    /// <param name="order">The piece and the garments.</param>
    /// <param name="nap">The direction rule that it follows.</param>
    /// <param name="layering">What is tried first where the lay has one and two layers.</param>
    public static ImmutableArray<ImmutableArray<CopyForm>> AlternativesFor(LaySurface surface, PieceOrder order, Nap nap, Layering layering)
    {
        Piece piece = order.Piece;
        ImmutableArray<CopyForm> folded = Repeated(order.Garments, [.. OnFold(surface, piece)]);
        ImmutableArray<CopyForm> two = surface.HasTwoLayers ? InTwoLayers(order, nap) : [];
        ImmutableArray<CopyForm> one = surface.HasOneLayer ? Repeated(order.Garments, [.. InOneLayer(piece)]) : [];
        bool alike = piece.Cut.Kind != CutKind.Copies || !surface.HasOneLayer || MirrorImage.IsItsOwn(piece, nap);
        bool oneFirst = layering == Layering.OneLayer || !alike;
        ImmutableArray<CopyForm>[] all = piece.Cut.Kind == CutKind.OnFold
            ? (layering == Layering.OneLayer ? [one, folded, two] : [folded, one, two])
            : (oneFirst ? [one, two] : [two, one]);
        return [.. all.Where(forms => !forms.IsEmpty)];
    }

    /// <summary>Every way that this copy may lie, whether or not it fits.</summary>
    public ImmutableArray<Turn> Turns(Cloth cloth, LaySurface surface)
    {
        Nap nap = AllowedTurns.NapFor(cloth, Piece);
        GrainRule grain = AllowedTurns.GrainFor(cloth, Piece);
        if (Contact == FoldContact.OnFold)
            return AllowedTurns.OnFold(surface, nap, grain);
        Angle tilt = Piece.Tilt ?? cloth.Tilt;
        return cloth.Faces == ClothFaces.TwoRightSides
            ? [.. AllowedTurns.For(nap, grain, tilt, Facing).Concat(AllowedTurns.For(nap, grain, tilt, Other(Facing)))]
            : AllowedTurns.For(nap, grain, tilt, Facing);
    }

    private static ImmutableArray<CopyForm> OnFold(LaySurface surface, Piece piece) => piece.Cut.Kind == CutKind.OnFold && surface.HasFold
        ? Repeated(piece.Cut.Count, new CopyForm(piece, Facing.Plain, 2, FoldContact.OnFold))
        : [];

    /// <summary>Copies come two at a time. An odd count will do when all garments together make it even and a copy is its own mirror image, for then it may go to either garment.</summary>
    private static ImmutableArray<CopyForm> InTwoLayers(PieceOrder order, Nap nap)
    {
        Piece piece = order.Piece;
        int count = piece.Cut.Count * order.Garments;
        bool isEven = int.IsEvenInteger(count);
        return piece.Cut.Kind switch
        {
            CutKind.Pairs => Repeated(count, Free(piece, Facing.Plain, 2)),
            CutKind.OnFold when isEven => Repeated(count / 2, Free(Unfolding.Unfold(piece), Facing.Plain, 2)),
            CutKind.Copies when isEven && (int.IsEvenInteger(piece.Cut.Count) || MirrorImage.IsItsOwn(piece, nap)) => Repeated(count / 2, Free(piece, Facing.Plain, 2)),
            _ => [],
        };
    }

    private static ImmutableArray<CopyForm> InOneLayer(Piece piece) => piece.Cut.Kind switch
    {
        CutKind.OnFold => Repeated(piece.Cut.Count, Free(Unfolding.Unfold(piece), Facing.Plain, 1)),
        CutKind.Pairs => Repeated(piece.Cut.Count, Free(piece, Facing.Plain, 1), Free(piece, Facing.Flipped, 1)),
        _ => Repeated(piece.Cut.Count, Free(piece, Facing.Plain, 1)),
    };

    private static Facing Other(Facing facing) => facing == Facing.Plain ? Facing.Flipped : Facing.Plain;

    private static CopyForm Free(Piece piece, Facing facing, int layers) => new(piece, facing, layers, FoldContact.Free);

    private static ImmutableArray<CopyForm> Repeated(int times, params CopyForm[] forms) =>
        [.. Enumerable.Range(0, times).SelectMany(_ => forms)];
}
