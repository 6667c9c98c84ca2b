using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>What the rules of placing do to the pieces of a job that their maker may not expect.</summary>
public static class LayNotes
{
    /// <summary>The notes for some pieces on a cloth, at most one for each name, in the order of the job.</summary>
    /// <param name="cloth">The cloth and how it is spread.</param>
    /// <param name="orders">As for <see cref="LayRules.TaskFor(Cloth, IEnumerable{PieceOrder})"/>.</param>
    public static ImmutableArray<LayNote> For(Cloth cloth, IEnumerable<PieceOrder> orders) =>
        [.. orders.Select(order => For(cloth, order.Piece)).OfType<LayNote>().DistinctBy(note => note.Piece)];

    private static LayNote? For(Cloth cloth, Piece piece) => (cloth.Lay, piece.Cut.Kind) switch
    {
        (LayForm.Folded, CutKind.Copies) when int.IsEvenInteger(piece.Cut.Count) && !MirrorImage.IsItsOwn(piece, cloth.Nap) => new(
            piece.Name,
            $"{piece.Name} is cut {piece.Cut} from folded cloth, so half of them come out as mirror images.",
            "Write it as pairs if that is meant; lay the cloth open if all must be alike."),
        (LayForm.Open, CutKind.Copies) when int.IsEvenInteger(piece.Cut.Count) && !MirrorImage.IsItsOwn(piece, cloth.Nap) => new(
            piece.Name,
            $"{piece.Name} is cut {piece.Cut} from open cloth, and {(piece.Cut.Count == 2 ? "both copies" : "all copies")} lie as drawn.",
            $"Write {new CutQuantity(piece.Cut.Count / 2, CutKind.Pairs)} for left and right ones."),
        (LayForm.Open, CutKind.Pairs) when cloth.Nap != Nap.None => new(
            piece.Name,
            $"The second {piece.Name} of each pair is turned over along the grain, so the nap runs the same way on both.",
            "Turn the paper over sideways, so that its top end stays at the same end of the cloth."),
        _ => null,
    };
}
