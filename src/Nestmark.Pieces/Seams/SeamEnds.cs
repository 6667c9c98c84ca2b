using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>Looks at both ends of a seam: seam allowances, hems or waists that cross it, and whether those run on.</summary>
internal static class SeamEnds
{
    /// <summary>The start and the end, or nothing where they cannot be compared.</summary>
    /// <param name="first">The first side.</param>
    /// <param name="second">The second side.</param>
    /// <param name="plan">Where places come to lie.</param>
    /// <param name="meetings">Notches that belong together, in the order of the first side; the outermost pin the ends.</param>
    public static ImmutableArray<SeamEnd> Of(SideWalk first, SideWalk second, TakeUpPlan plan, ImmutableArray<NotchMeeting> meetings)
    {
        if (!first.HasNotches || !second.HasNotches)
            return [];
        double startStep = meetings.IsEmpty ? 0 : Ahead(meetings[0]);
        double endStep = plan.FirstFinishedMillimeters - plan.SecondFinishedMillimeters - (meetings.IsEmpty ? 0 : Ahead(meetings[^1]));
        SeamEnd? start = Between(first.Runs[0]!, first.Runs[0]!.Corners[0], second.Runs[0]!, second.Runs[0]!.Corners[0]) is { } one
            ? one with { Step = Length.FromMillimeters(startStep), PinnedAt = meetings.FirstOrDefault()?.First }
            : null;
        SeamEnd? end = Between(first.Runs[^1]!, first.Runs[^1]!.Corners[^1], second.Runs[^1]!, second.Runs[^1]!.Corners[^1]) is { } other
            ? other with { Step = Length.FromMillimeters(endStep), PinnedAt = meetings.LastOrDefault()?.First }
            : null;
        return [.. new[] { start, end }.OfType<SeamEnd>()];

        // How much further from the start of the seam a notch lies on the first side than its partner on the second.
        double Ahead(NotchMeeting meeting) =>
            plan.FinishedAlong(SeamSide.First, meeting.First.AlongMillimeters) - plan.FinishedAlong(SeamSide.Second, meeting.Second.AlongMillimeters);
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
            firstHem.Allowance, secondHem.Allowance, point)
        {
            Step = Length.Zero,
            PinnedAt = null,
        };
    }

    private static PieceEdge? Crossing(EdgeRun run, string corner) => IsStart(run, corner) ? run.CrossingAtStart : run.CrossingAtEnd;

    private static PieceEdge Own(EdgeRun run, string corner) => IsStart(run, corner) ? run.Edges[0] : run.Edges[^1];

    private static Point PlaceOf(EdgeRun run, string corner) => IsStart(run, corner) ? run.Points[0] : run.Points[^1];

    private static bool IsStart(EdgeRun run, string corner) => run.Corners[0] == corner;
}
