using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>The cutting line at an end of the fold edge: the edge beside it runs on to the fold line, as the opened piece has it.</summary>
internal static class FoldJoin
{
    /// <summary>From the fold to the edge beside it. A point past the limit is cut square to the fold; three points mean that the clean-up must cut at the fold line.</summary>
    /// <param name="beside">The edge that is cut.</param>
    /// <param name="fold">The fold edge.</param>
    /// <param name="angle">Of the corner; the seam line rises from the fold.</param>
    public static ImmutableArray<Vector> From(AllowanceSide beside, AllowanceSide fold, CornerAngle angle)
    {
        if (beside.Width == 0)
            return [beside.Corner];
        if (angle.Cosine > 0)
            return Inside(beside, fold, angle);
        double run = beside.Width / angle.Sine;
        if (run <= angle.LimitMicrometers)
            return [fold.Corner - run * fold.Along];
        double back = (angle.LimitMicrometers - beside.Width * angle.Sine) / angle.Cosine;
        return [fold.Corner - angle.LimitMicrometers * fold.Along, beside.Foot + back * beside.Along];
    }

    private static ImmutableArray<Vector> Inside(AllowanceSide beside, AllowanceSide fold, CornerAngle angle)
    {
        ImmutableArray<Vector> onward = [fold.Corner, fold.Corner - angle.ReachMicrometers * fold.Along];
        if (RunCrossing.First(onward, beside.Run(0)) is not { } meeting)
            return [fold.Corner, beside.Foot];
        beside.Dropped = meeting.RunIndex;
        return [meeting.Place];
    }
}
