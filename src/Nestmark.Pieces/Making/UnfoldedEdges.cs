using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>The edges of an opened piece: those of the half, those that cross the center line, and the mirror images.</summary>
internal static class UnfoldedEdges
{
    /// <summary>Half first, in its order; then the mirror images in the same order.</summary>
    /// <param name="half">A piece with a fold edge.</param>
    /// <param name="gone">Letters of corners on the fold that the opened outline passes without a corner.</param>
    public static ImmutableArray<PieceEdge> Of(Piece half, ImmutableArray<string> gone)
    {
        ImmutableArray<string> onFold = [.. half.Corners.Where(corner => corner.Place.Y == 0).Select(corner => corner.Letter)];
        ImmutableArray<PieceEdge> cut = [.. half.Edges.Where(edge => edge.Kind == EdgeKind.Cut)];
        return [.. cut.Select(edge => Whole(edge, gone, onFold)), .. cut.Where(edge => !Touches(edge, gone)).Select(edge => MirrorImage(edge, onFold))];
    }

    private static bool Touches(PieceEdge edge, ImmutableArray<string> letters) => letters.Contains(edge.From) || letters.Contains(edge.To);

    /// <summary>An edge that runs to the fold and on past it is twice as long.</summary>
    private static PieceEdge Whole(PieceEdge edge, ImmutableArray<string> gone, ImmutableArray<string> onFold) => !Touches(edge, gone) ? edge : edge with
    {
        From = gone.Contains(edge.From) ? MirrorLetter(edge.To, onFold) : edge.From,
        To = gone.Contains(edge.To) ? MirrorLetter(edge.From, onFold) : edge.To,
        SeamLineLength = edge.SeamLineLength * 2,
    };

    private static PieceEdge MirrorImage(PieceEdge edge, ImmutableArray<string> onFold) =>
        edge with { From = MirrorLetter(edge.From, onFold), To = MirrorLetter(edge.To, onFold) };

    private static string MirrorLetter(string letter, ImmutableArray<string> onFold) =>
        onFold.Contains(letter) ? letter : Unfolding.Primed(letter);
}
