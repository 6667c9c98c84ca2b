using System.Collections.Immutable;

namespace Nestmark.Pieces.Seams;

/// <summary>Finds which notches of two sides belong together.</summary>
/// <remarks>Notches with the same name belong together; of the others those that come nearest to each other, within 25 mm.</remarks>
internal static class NotchPairing
{
    private const double FarthestMillimeters = 25;

    /// <summary>Pairs in the order of the first side, and the notches left over on either side.</summary>
    /// <param name="first">The first side.</param>
    /// <param name="second">The second side.</param>
    /// <param name="plan">Where places come to lie.</param>
    /// <param name="toleranceMillimeters">Lone notches this near to a join between two pieces meet that join.</param>
    public static (ImmutableArray<NotchMeeting> Meetings, ImmutableArray<NotchAlong> FirstAlone, ImmutableArray<NotchAlong> SecondAlone) Of(
        SideWalk first, SideWalk second, TakeUpPlan plan, double toleranceMillimeters)
    {
        if (!first.HasNotches || !second.HasNotches)
            return ([], [], []);
        List<NotchAlong> firstLeft = [.. first.Notches];
        List<NotchAlong> secondLeft = [.. second.Notches];
        List<NotchMeeting> meetings = [];
        Take(named: true);
        Take(named: false);
        ImmutableArray<NotchAlong> firstAlone = [.. firstLeft.Where(notch => !AtJoin(second, SeamSide.Second, Finished(SeamSide.First, notch)))];
        ImmutableArray<NotchAlong> secondAlone = [.. secondLeft.Where(notch => !AtJoin(first, SeamSide.First, Finished(SeamSide.Second, notch)))];
        return ([.. meetings.OrderBy(meeting => meeting.First.AlongMillimeters)], firstAlone, secondAlone);

        void Take(bool named)
        {
            NotchMeeting[] candidates = [.. firstLeft
                .SelectMany(one => secondLeft.Select(other => new NotchMeeting(one, other, Math.Abs(Finished(SeamSide.First, one) - Finished(SeamSide.Second, other)))))
                .Where(pair => named ? pair.First.Name.Length > 0 && pair.First.Name == pair.Second.Name : pair.ApartMillimeters <= FarthestMillimeters)
                .OrderBy(pair => pair.ApartMillimeters).ThenBy(pair => pair.First.AlongMillimeters).ThenBy(pair => pair.Second.AlongMillimeters)];
            foreach (NotchMeeting candidate in candidates)
            {
                if (!firstLeft.Contains(candidate.First) || !secondLeft.Contains(candidate.Second))
                    continue;
                firstLeft.Remove(candidate.First);
                secondLeft.Remove(candidate.Second);
                meetings.Add(candidate);
            }
        }

        double Finished(SeamSide side, NotchAlong notch) => plan.FinishedAlong(side, notch.AlongMillimeters);

        // A sleeve head's top notch meets the shoulder, where front ends and back begins.
        bool AtJoin(SideWalk side, SeamSide which, double finished) => Joins(side).Any(join => Math.Abs(plan.FinishedAlong(which, join) - finished) <= toleranceMillimeters);
    }

    private static IEnumerable<double> Joins(SideWalk side)
    {
        double walked = 0;
        foreach (EdgeRun? run in side.Runs.SkipLast(1))
        {
            walked += run!.LengthMillimeters;
            yield return walked;
        }
        foreach (double corner in CornersWithin(side))
            yield return corner;
    }

    private static IEnumerable<double> CornersWithin(SideWalk side)
    {
        double walked = 0;
        foreach (EdgeRun? run in side.Runs)
        {
            foreach (PieceEdge edge in run!.Edges)
            {
                walked += edge.SeamLineLength.TotalMillimeters;
                yield return walked;
            }
        }
    }
}
