using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Whether an altered piece is still a piece: the real test behind every refusal.</summary>
internal static class PaperCheck
{
    private const double ShortestEdgeMicrometers = 100;
    private const double FarthestMicrometers = 100_000_000;
    private const double OffFoldMicrometers = 3;

    /// <summary>What is wrong; <c>null</c> for nothing.</summary>
    /// <param name="before">As it was, for the way its fold lies.</param>
    /// <param name="after">As it is now.</param>
    public static AlterationFault? Of(Paper before, Paper after)
    {
        if (after.Places.Any(place => Math.Abs(place.X) > FarthestMicrometers || Math.Abs(place.Y) > FarthestMicrometers))
            return AlterationFaults.TooFar();
        if (after.Edges.FirstOrDefault(edge => edge.LengthMicrometers < ShortestEdgeMicrometers) is { } gone)
            return AlterationFaults.EdgeVanishes(gone.Name);
        if (after.Fold is { } fold && before.Fold is { } oldFold && FoldFault(fold, oldFold, after) is { } foldFault)
            return foldFault;
        return IsSimple(after) ? null : AlterationFaults.CrossesItself();
    }

    private static AlterationFault? FoldFault(PaperEdge fold, PaperEdge oldFold, Paper after)
    {
        Vector direction = (fold.End - fold.Start).Unit;
        Vector old = (oldFold.End - oldFold.Start).Unit;
        if (direction.Dot(old) < 0)
            return AlterationFaults.EdgeVanishes(fold.Name);
        if (Math.Abs(direction.Cross(old)) > 1e-4)
            return AlterationFaults.FoldTurned(fold.Name);
        // The piece lies to the left of its edges.
        return after.Places.All(place => direction.Cross(place - fold.Start) > -OffFoldMicrometers) ? null : AlterationFaults.OverFold();
    }

    private static bool IsSimple(Paper paper)
    {
        SeamOutline? outline = SeamOutline.Of([.. paper.Places.Select(place => new OutlineVertex(place.Rounded(), VertexKind.Curve))], []);
        return outline is not null && IsCounterClockwise(paper) && Clipping.IsSimple(Polygon.Of(outline.Points));
    }

    private static bool IsCounterClockwise(Paper paper)
    {
        Point[] points = [.. paper.Places.Select(place => place.Rounded())];
        return Polygon.TwiceSignedArea(points) > 0;
    }
}
