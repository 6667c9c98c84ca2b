using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>Looks at both ends of a seam: seam allowances, hems or waists that cross it, and whether those run on.</summary>
internal static class SeamEnds
{
    /// <summary>The start and the end, or nothing where they cannot be compared.</summary>
    public static ImmutableArray<SeamEnd> Of(SideWalk first, SideWalk second)
    {
        if (!first.HasNotches || !second.HasNotches)
            return [];
        SeamEnd? start = Between(first.Runs[0]!, first.Runs[0]!.Corners[0], second.Runs[0]!, second.Runs[0]!.Corners[0]);
        SeamEnd? end = Between(first.Runs[^1]!, first.Runs[^1]!.Corners[^1], second.Runs[^1]!, second.Runs[^1]!.Corners[^1]);
        return [.. new[] { start, end }.OfType<SeamEnd>()];
    }

    private static SeamEnd? Between(EdgeRun first, string firstCorner, EdgeRun second, string secondCorner)
    {
        if (Crossing(first, firstCorner) is not { } firstHem || Crossing(second, secondCorner) is not { } secondHem)
            return null;
        bool onFold = firstHem.Kind == EdgeKind.Fold || secondHem.Kind == EdgeKind.Fold;
        double point = onFold ? 0 : 180 - first.InteriorDegrees(PlaceOf(first, firstCorner)) - second.InteriorDegrees(PlaceOf(second, secondCorner));
        return new SeamEnd(
            first.Piece.Name + "." + firstCorner, second.Piece.Name + "." + secondCorner,
            Own(first, firstCorner).Allowance, Own(second, secondCorner).Allowance,
            first.Piece.Name + "." + firstHem.Name, second.Piece.Name + "." + secondHem.Name,
            firstHem.Allowance, secondHem.Allowance, point);
    }

    private static PieceEdge? Crossing(EdgeRun run, string corner) => IsStart(run, corner) ? run.CrossingAtStart : run.CrossingAtEnd;

    private static PieceEdge Own(EdgeRun run, string corner) => IsStart(run, corner) ? run.Edges[0] : run.Edges[^1];

    private static Point PlaceOf(EdgeRun run, string corner) => IsStart(run, corner) ? run.Points[0] : run.Points[^1];

    private static bool IsStart(EdgeRun run, string corner) => run.Corners[0] == corner;
}
