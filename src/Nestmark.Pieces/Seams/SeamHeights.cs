using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>
/// Compares the heights of two joined pieces: a slanted seam is longer than the piece is high, so that two sides of one length can still put
/// a level hem higher on one piece than on the other.
/// </summary>
/// <remarks>
/// Only where the edges at both ends of the seam run straight across the grain on both pieces: a hem that curves up toward the seam, as it should on a
/// slanted side, says nothing about heights. Common practice, no source.
/// </remarks>
internal static class SeamHeights
{
    private const double StraightMicrometers = 1_000;

    /// <summary>Edges this near to square across the grain are level: 2 degrees.</summary>
    private static readonly double LevelSine = Angle.FromDegrees(2).SineRatio;

    /// <summary>The heights along the grain, or <c>null</c> where they cannot be compared.</summary>
    public static (Length First, Length Second)? Of(SideWalk first, SideWalk second) =>
        HeightOf(first) is { } one && HeightOf(second) is { } other ? (one, other) : null;

    private static Length? HeightOf(SideWalk side)
    {
        if (!side.HasNotches || side.Runs is not [{ } run])
            return null;
        return IsLevel(run.Piece, run.CrossingAtStart) && IsLevel(run.Piece, run.CrossingAtEnd)
            ? Length.FromMicrometers(Math.Abs(run.Points[^1].X - run.Points[0].X))
            : null;
    }

    // The grain of a piece lies along x.
    private static bool IsLevel(Piece piece, PieceEdge? edge)
    {
        if (edge is null || EdgeRun.Find(piece, [edge.From, edge.To]) is not { } run)
            return false;
        double along = Math.Abs(run.Points[^1].X - run.Points[0].X);
        double across = Math.Abs(run.Points[^1].Y - run.Points[0].Y);
        bool isSquare = along <= LevelSine * (along + across);
        return isSquare && run.Points.Max(point => point.X) - run.Points.Min(point => point.X) <= along + StraightMicrometers;
    }
}
