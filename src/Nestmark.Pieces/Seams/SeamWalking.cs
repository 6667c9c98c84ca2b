using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>Walks two sides of a seam against each other along the seam line.</summary>
/// <remarks>
/// Walking and truing along the sewing line, notch to notch, darts left out: references/trade.md 8, [DS-TRUE].
/// The tolerance of 3 mm and half of it are trade.md 8's suggestion (warn over 1.5, error over 3 mm, after ease).
/// A take-up shortens its zone evenly; outside the zone both sides run alike.
/// </remarks>
public static class SeamWalking
{
    /// <summary>Largest difference that still meets unless the user says otherwise: 3 mm.</summary>
    public static Length UsualTolerance { get; } = Length.FromMillimeters(3);

    /// <summary>Walks the seam.</summary>
    /// <param name="seam">Which edges, what is taken up, and how near they must come.</param>
    /// <param name="first">Its first side on the pieces of one size.</param>
    /// <param name="second">Its second side on the pieces of the same size.</param>
    /// <remarks>A zone whose notches are not there counts as the whole side.</remarks>
    public static SeamWalk Walk(Seam seam, SideWalk first, SideWalk second)
    {
        TakeUpPlan plan = TakeUpPlan.Of(seam.TakeUp, first, second);
        double difference = plan.FirstFinishedMillimeters - plan.SecondFinishedMillimeters;
        (ImmutableArray<NotchMeeting> meetings, ImmutableArray<NotchAlong> firstAlone, ImmutableArray<NotchAlong> secondAlone) =
            NotchPairing.Of(first, second, plan, seam.Tolerance.TotalMillimeters);
        Length rounded = Length.FromMillimeters(difference);
        return new SeamWalk
        {
            First = first.Text,
            Second = second.Text,
            FirstLength = Length.FromMillimeters(first.LengthMillimeters),
            SecondLength = Length.FromMillimeters(second.LengthMillimeters),
            TakenUp = Length.FromMillimeters(plan.AmountMillimeters),
            Difference = rounded,
            Ratio = plan.Ratio,
            Zone = seam.TakeUp is null ? null : (Length.FromMillimeters(plan.FromMillimeters), Length.FromMillimeters(plan.ToMillimeters)),
            Verdict = VerdictOf(rounded, seam.Tolerance),
            Meetings = meetings,
            FirstAlone = firstAlone,
            SecondAlone = secondAlone,
            Ends = SeamEnds.Of(first, second, plan, meetings),
            Heights = seam.TakeUp is null ? SeamHeights.Of(first, second) : null,
            SeemsHalved = seam.TakeUp is null && SeemsHalved(first, second, seam.Tolerance.TotalMillimeters),
        };
    }

    private static SeamVerdict VerdictOf(Length difference, Length tolerance)
    {
        long apart = Math.Abs(difference.Micrometers);
        return 2 * apart <= tolerance.Micrometers ? SeamVerdict.Meets
            : apart <= tolerance.Micrometers ? SeamVerdict.Near
            : SeamVerdict.Apart;
    }

    private static bool SeemsHalved(SideWalk first, SideWalk second, double toleranceMillimeters)
    {
        (SideWalk shorter, SideWalk longer) = first.LengthMillimeters < second.LengthMillimeters ? (first, second) : (second, first);
        return shorter.Runs.All(run => run is { IsOfHalf: true })
            && Math.Abs(2 * shorter.LengthMillimeters - longer.LengthMillimeters) <= toleranceMillimeters;
    }
}
