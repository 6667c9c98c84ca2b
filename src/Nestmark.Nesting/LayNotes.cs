using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>What the rules of placing do to the pieces of a job that their maker may not expect.</summary>
public static class LayNotes
{
    /// <summary>The notes for what is placed on a cloth, at most one for each name, in the order of the job.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="demands">What is placed.</param>
    public static ImmutableArray<LayNote> For(Cloth cloth, IEnumerable<Demand> demands) =>
        [.. demands.Select(demand => For(cloth, demand)).OfType<LayNote>().DistinctBy(note => note.Piece)];

    private static LayNote? For(Cloth cloth, Demand demand)
    {
        Piece piece = demand.Piece;
        bool isTurnedAcross = AllowedTurns.GrainFor(cloth, piece) != piece.Grain;
        return (demand.Layers, piece.Cut.Kind) switch
        {
            (2, CutKind.Copies) when IsUnlikeItsMirrorImage(cloth, piece) => new(
                piece.Name,
                $"{piece.Name} is cut {piece.Cut} from folded cloth, so half of them come out as mirror images.",
                "Write it as pairs if that is meant; lay the cloth open if all must be alike."),
            (2, CutKind.Copies) when int.IsOddInteger(piece.Cut.Count) => new(
                piece.Name,
                $"{piece.Name} is cut {piece.Cut} for each garment, and each place gives two, which go to any of them.",
                ""),
            (1, CutKind.Copies) when IsUnlikeItsMirrorImage(cloth, piece) => new(
                piece.Name,
                $"{piece.Name} is cut {piece.Cut} from open cloth, and {(piece.Cut.Count == 2 ? "both copies" : "all copies")} lie as drawn.",
                $"Write {new CutQuantity(piece.Cut.Count / 2, CutKind.Pairs)} for left and right ones."),
            (1, CutKind.Pairs) when AllowedTurns.NapFor(cloth, piece) != Nap.None && cloth.Faces == ClothFaces.OneRightSide => new(
                piece.Name,
                $"The second {piece.Name} of each pair is turned over along the grain, so the nap runs the same way on both.",
                "Turn the paper over sideways, so that its top end stays at the same end of the cloth."),
            _ when isTurnedAcross => new(
                piece.Name,
                $"{piece.Name} lies with its grainline {(AllowedTurns.GrainFor(cloth, piece) == GrainRule.Across ? "across" : "along")} the cloth, so that it stretches the way it must.",
                "Compare the stretch of cloth and piece by hand before cutting."),
            _ => null,
        };
    }

    private static bool IsUnlikeItsMirrorImage(Cloth cloth, Piece piece) =>
        piece.FoldEdge is null && piece.CenterLine is null && int.IsEvenInteger(piece.Cut.Count)
        && cloth.Faces == ClothFaces.OneRightSide && !MirrorImage.IsItsOwn(piece, AllowedTurns.NapFor(cloth, piece));
}
