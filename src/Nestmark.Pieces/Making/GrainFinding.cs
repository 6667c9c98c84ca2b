using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>Finds the turn that lays a piece with its grain along x, and a fold edge below the piece.</summary>
/// <remarks>
/// The arrow's head is the top of the cloth, so it always ends toward +x. A half piece whose fold edge would then lie above it is turned over:
/// a half on the fold and its mirror image open to the same whole piece.
/// </remarks>
internal static class GrainFinding
{
    /// <summary>Sine of 0.1 degrees.</summary>
    private static readonly double ParallelSine = Angle.FromDegrees(0.1).SineRatio;

    /// <summary>The turn, and what is wrong with the grainline.</summary>
    /// <param name="draft">Its grainline and grain rule count.</param>
    /// <param name="fold">The fold edge; <c>null</c> for none.</param>
    /// <param name="faults">Receives what is to be said.</param>
    public static Turn Find(PieceDraft draft, OutlineEdge? fold, ICollection<PieceFault> faults)
    {
        Vector? grain = DrawnGrain(draft, faults);
        if (fold is null)
            return grain is { } drawn ? Turn.By(-AngleOf(drawn)) : Turn.None;
        Vector alongFold = Vector.Of(fold.Points[^1]) - Vector.Of(fold.Points[0]);
        Vector head = grain is { } along && IsParallel(along, alongFold, draft.Grain, faults) ? along : DefaultHead(alongFold);
        return head.Dot(alongFold) > 0 ? Turn.By(-AngleOf(alongFold)) : new Turn(AngleOf(-alongFold), Facing.Flipped);
    }

    /// <summary>Whether a grainline as laid runs along x within 0.1 degrees and a rounding of its ends.</summary>
    public static bool LiesAlongX(Segment laid) =>
        Math.Abs(laid.End.Y - laid.Start.Y) <= ParallelSine * Math.Abs(laid.End.X - laid.Start.X) + 2;

    private static Vector? DrawnGrain(PieceDraft draft, ICollection<PieceFault> faults)
    {
        if (draft.Grainline is not { } grainline)
            return null;
        if (grainline.Start != grainline.End)
            return Vector.Of(grainline.End) - Vector.Of(grainline.Start);
        faults.Add(PieceFaults.GrainWithoutLength());
        return null;
    }

    private static bool IsParallel(Vector grain, Vector alongFold, GrainRule rule, ICollection<PieceFault> faults)
    {
        if (Math.Abs(grain.Unit.Cross(alongFold.Unit)) <= ParallelSine)
            return true;
        faults.Add(rule == GrainRule.Along ? PieceFaults.GrainOffFold() : PieceFaults.GrainFollowsFold());
        return false;
    }

    /// <summary>Without a drawn grainline the head points right in the drawing, or up when the fold is steeper than 45 degrees.</summary>
    private static Vector DefaultHead(Vector alongFold) =>
        Math.Abs(alongFold.X) >= Math.Abs(alongFold.Y)
            ? (alongFold.X > 0 ? alongFold : -alongFold)
            : (alongFold.Y > 0 ? alongFold : -alongFold);

    private static Angle AngleOf(Vector direction) => Angle.OfDirection(direction.X, direction.Y);
}
