using System.Collections.Concurrent;
using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage.Saving;

/// <summary>Plans a job, then lays changes of it and tells which would need less cloth.</summary>
public static class SavingSearch
{
    /// <summary>The plan with its <see cref="Plan.Savings"/>. Half of the seconds or steps go to the plan, the other half is shared by the changes.</summary>
    /// <param name="job">The job, without errors.</param>
    /// <param name="effort">For everything together.</param>
    /// <param name="report">News of the plan's own search, as for <see cref="Planner.Make(Job, Effort, Action{string, SearchProgress}, CancellationToken)"/>.</param>
    /// <param name="cancellation">Ends the searches. Changes that were not searched to their end are left out.</param>
    /// <remarks>A change is searched for a shorter time than the plan, so a saving may be greater than told, but not less: each has its own verified marker.</remarks>
    public static Plan Make(Job job, Effort effort, Action<string, SearchProgress> report, CancellationToken cancellation)
    {
        Plan plan = Planner.Make(job, Part(effort, 2), report, cancellation) with { Effort = effort };
        ImmutableArray<Trial> trials =
            [.. plan.Cloths.Where(cloth => cloth.Marker.Unplaced.IsEmpty && !cloth.Marker.Placements.IsEmpty).SelectMany(cloth => Trials.Of(job, cloth))];
        return plan with { Savings = Laid(trials, effort, cancellation) };
    }

    private static SavingReport Laid(ImmutableArray<Trial> trials, Effort effort, CancellationToken cancellation)
    {
        int rounds = Math.Max(1, (trials.Length + effort.Threads - 1) / effort.Threads);
        Effort each = effort.Steps is null ? Part(effort, 2 * rounds) : Part(effort, 2 * Math.Max(1, trials.Length));
        ClothPlan?[] laid = new ClothPlan?[trials.Length];
        Parallel.ForEach(
            Partitioner.Create(Enumerable.Range(0, trials.Length), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = effort.Threads },
            i => laid[i] = cancellation.IsCancellationRequested ? null : Searched(trials[i], each with { Threads = 1 }, cancellation));
        SavingWay[] ways = [.. trials.Zip(laid).Where(pair => pair.Second is not null)
            .Select(pair => new SavingWay(pair.First.Kind, pair.First.What, pair.First.Consequence(pair.Second!), pair.First.Before, pair.Second!))];
        return new SavingReport(
            [.. ways.Where(way => way.Saved > Length.Zero && !ways.Any(other => IsBetterWidth(other, way))).OrderByDescending(way => way.Saved).ThenBy(way => way.After.Marker.LayLength)],
            [.. ways.Select(way => $"{way.Before.Cloth.Name}: {way.What}")]);
    }

    // The narrower of two widths that save alike is the cheaper one.
    private static bool IsBetterWidth(SavingWay other, SavingWay way) =>
        other.Kind == SavingKind.WiderCloth && way.Kind == SavingKind.WiderCloth
        && other.Before == way.Before && other.After.Cloth.Width < way.After.Cloth.Width && other.Saved >= way.Saved;

    private static ClothPlan? Searched(Trial trial, Effort effort, CancellationToken cancellation)
    {
        ClothPlan plan = Planner.Make(trial.Job, effort, (_, _) => { }, cancellation).Cloths[0];
        return cancellation.IsCancellationRequested || !plan.Marker.Unplaced.IsEmpty || IsOpenInTruth(plan) ? null : plan;
    }

    // A mixed lay whose folded section came out empty is an open one, which is tried for itself.
    private static bool IsOpenInTruth(ClothPlan plan) => plan.Marker.Surface is { Form: LayForm.Mixed } surface && surface.Bands[0].To == Length.Zero;

    private static Effort Part(Effort effort, int parts) => effort with
    {
        Seconds = effort.Seconds / parts,
        Steps = effort.Steps is long steps ? Math.Max(1, steps / parts) : null,
    };
}
