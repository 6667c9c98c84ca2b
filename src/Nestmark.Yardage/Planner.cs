using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Yardage.Seams;

namespace Nestmark.Yardage;

/// <summary>The one door to the core: from a job to its plan.</summary>
public static class Planner
{
    /// <summary>Plans every cloth of the job.</summary>
    /// <param name="job">The job, without errors.</param>
    /// <param name="effort">How long and how the search may run. Seconds are shared out between the cloths by the area to be cut from them.</param>
    /// <param name="report">Called with news: name of the cloth, and how its search stands.</param>
    /// <param name="cancellation">Ends the searches; the best markers so far are kept.</param>
    /// <exception cref="ArgumentException">The effort has neither seconds nor steps, or both, or no thread.</exception>
    public static Plan Make(Job job, Effort effort, Action<string, SearchProgress> report, CancellationToken cancellation) =>
        Make(job, effort, report, MarkerMaking.Make, cancellation);

    /// <summary>What can be told without a search: pieces that cannot lie on their cloth, as errors, and the notes that a plan would carry.</summary>
    /// <param name="job">The job, without errors.</param>
    public static ImmutableArray<Problem> Check(Job job)
    {
        LayWording wording = LengthWords.WordingOf(job.System);
        ClothWork[] works = [.. job.Cloths.Select(cloth => ClothWork.Of(job, cloth, wording))];
        return [.. works.SelectMany(work => PlanNotes.Refusals(job, work)), .. works.SelectMany(work => PlanNotes.Of(job, work, work.Options[0])), .. SeamNotes.Of(job)];
    }

    /// <summary>The same with another search.</summary>
    internal static Plan Make(
        Job job, Effort effort, Action<string, SearchProgress> report,
        Func<LayTask, SearchSettings, Marker> makeMarker, CancellationToken cancellation)
    {
        Check(effort);
        LayWording wording = LengthWords.WordingOf(job.System);
        ClothWork[] works = [.. job.Cloths.Select(cloth => ClothWork.Of(job, cloth, wording))];
        double areaOfAll = works.Sum(work => work.AreaSquareMillimeters);
        List<ClothPlan> plans = [];
        List<Problem> notes = [];
        foreach (ClothWork work in works)
        {
            SearchSettings settings = new(
                effort.Seed, effort.Threads, effort.Stop(areaOfAll > 0 ? work.AreaSquareMillimeters / areaOfAll : 1),
                progress => report(work.Cloth.Name, progress), cancellation);
            bool isMatched = work.IsMatched && !work.Options[0].Demands.IsEmpty;
            SearchSettings own = isMatched ? settings with { Stop = settings.Stop.Part(0, MatchingCosts.MatchedPart) } : settings;
            LaidCloth laid = work.Options[0].Demands.IsEmpty ? Empty(work.Options[0]) : LayMaking.Make(work.Options, own, makeMarker);
            Purchase purchase = Purchasing.For(work.Cloth, laid.Marker.ClothLength, job.System);
            plans.Add(new ClothPlan(work.Cloth, laid.Marker, purchase)
            {
                OtherForms = laid.OtherForms,
                Matching = isMatched ? MatchingCosts.Of(work, laid.Marker, wording, LaidPlain) : null,
                Rules = [.. laid.Option.Demands.Select(demand => demand.Hold).OfType<PrintHold>().SelectMany(hold => hold.Ties).Select(tie => tie.Text).Distinct()],
            });
            notes.AddRange(MatchNotes.Of(job, plans[^1]));
            notes.AddRange(PlanNotes.Of(job, work, laid.Option));

            Marker LaidPlain(ImmutableArray<LayOption> options) =>
                LayMaking.Make(options, settings with { Stop = settings.Stop.Part(MatchingCosts.MatchedPart, 1), Report = _ => { } }, makeMarker).Marker;
        }
        return new Plan(job, effort, [.. plans], [.. notes, .. SeamNotes.Of(job)]);
    }

    private static LaidCloth Empty(LayOption option) => new(option, new Marker(option.Sections[0].Surface, Length.Zero, [], option.Impossible), []);

    private static void Check(Effort effort)
    {
        if (effort.Seconds is null == effort.Steps is null)
            throw new ArgumentException("An effort is given in seconds or in steps, one of them.", nameof(effort));
        if (effort.Threads < 1 || effort.Steps < 0)
            throw new ArgumentException("Threads must be 1 or more, steps 0 or more.", nameof(effort));
    }
}
