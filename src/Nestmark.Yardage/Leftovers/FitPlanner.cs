using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>Whether the pieces of a job come out of leftovers, from which, and what is missing.</summary>
public static class FitPlanner
{
    private const double FitEnd = 0.5;
    private const double HelpsEnd = 0.85;

    /// <summary>Looks for a place on the leftovers for every piece, and where that fails for what would help.</summary>
    /// <param name="job">The job, without errors; every remnant names one of its cloths.</param>
    /// <param name="effort">How long the search may run, all cloths together; it ends early when everything fits.</param>
    /// <param name="cancellation">Ends the search; the best so far is kept.</param>
    public static FitPlan Make(Job job, Effort effort, CancellationToken cancellation)
    {
        ImmutableArray<Cloth> cloths = [.. job.Cloths.Where(cloth => job.Pieces.Any(piece => piece.Cloth == cloth.Name))];
        StopRule stop = effort.Stop();
        List<ClothFit> fits = [];
        for (int i = 0; i < cloths.Length; i++)
        {
            StopRule share = stop.Part((double)i / cloths.Length, (i + 1.0) / cloths.Length);
            fits.Add(Fit(job, cloths[i], new SearchSettings(effort.Seed, 1, share, _ => { }, cancellation)));
        }
        Plan plan = new(job, effort, [.. fits.Select(LayoutOf).OfType<ClothPlan>()], [.. fits.SelectMany(fit => fit.Notes)]);
        return new FitPlan(plan, [.. fits]) { Instead = Instead(plan, fits) };
    }

    /// <summary>The plan with the first change that makes everything fit, where one was found for a cloth.</summary>
    private static Plan? Instead(Plan plan, List<ClothFit> fits)
    {
        FitHelp[] changes = [.. fits.Select(ChangeOf).OfType<FitHelp>()];
        return changes.Length == 0 ? null : plan with
        {
            Job = fits.Aggregate(plan.Job, (job, fit) => NarrowerAllowances.With(job, fit.Cloth, ChangeOf(fit)?.Narrower ?? [])),
            Cloths = [.. fits.Select(fit => ChangeOf(fit)?.Layout ?? LayoutOf(fit)).OfType<ClothPlan>()],
            Notes = [.. fits.SelectMany(fit => ChangeOf(fit) is { } change ? [NoteOn(plan.Job, fit.Cloth, change.Sentence, ""), .. fit.Notes] : fit.Notes)],
        };
    }

    /// <summary>The layout, which names what is missing on it.</summary>
    private static ClothPlan? LayoutOf(ClothFit fit) => fit.Layout is { } layout
        ? layout with { Marker = layout.Marker with { Unplaced = [.. fit.Missing.Select(Unplaced)] } }
        : null;

    private static Unplaced Unplaced(MissingPiece missing) =>
        new(missing.Title, "", $"{missing.Title}{(missing.Copies > 1 ? string.Create(CultureInfo.InvariantCulture, $" ({missing.Copies} times)") : "")}: {missing.Reason}");

    private static FitHelp? ChangeOf(ClothFit fit) => fit.Helps.FirstOrDefault(help => help.Layout is not null);

    private static Problem NoteOn(Job job, Cloth cloth, string what, string hint) =>
        new(Severity.Note, new Place(job.Source, 0, 0, "cloths." + cloth.Name), what, hint);

    /// <summary>What stands in the way of looking at leftovers at all.</summary>
    public static ImmutableArray<Problem> Obstacles(Job job) => job.Remnants.IsEmpty
        ? [new Problem(Severity.Error, new Place(job.Source, 0, 0, "remnants"), "The job lists no leftovers.", "Add remnants: { corner: { rectangle: 60 x 40 } }.")]
        : [];

    /// <summary>Plans a job from its leftovers first; only what finds no place on them is laid on cloth to buy, open and in one layer.</summary>
    /// <param name="job">The job, without errors. Cloths of which no leftover is listed are planned as ever.</param>
    /// <param name="effort">How long and how the search may run.</param>
    /// <param name="report">Called with news: name of the cloth, and how its search stands.</param>
    /// <param name="cancellation">Ends the searches; the best so far is kept.</param>
    public static Plan LeftoversFirst(Job job, Effort effort, Action<string, SearchProgress> report, CancellationToken cancellation)
    {
        string[] withLeftovers = [.. job.Remnants.Select(remnant => remnant.Cloth)];
        Job fitted = job with { Pieces = [.. job.Pieces.Where(piece => withLeftovers.Contains(piece.Cloth))] };
        Job bought = job with
        {
            Pieces = [.. job.Pieces.Where(piece => !withLeftovers.Contains(piece.Cloth))],
            Cloths = [.. job.Cloths.Where(cloth => !withLeftovers.Contains(cloth.Name))],
        };
        Effort half = effort with { Seconds = effort.Seconds / 2 };
        FitPlan fit = Make(fitted, half, cancellation);
        Plan rest = bought.Cloths.IsEmpty ? new Plan(job, effort, [], []) : Planner.Make(bought, half, report, cancellation);
        return new Plan(job, effort, [.. fit.Cloths.SelectMany(Plans), .. rest.Cloths], [.. fit.Plan.Notes, .. rest.Notes]);
    }

    private static IEnumerable<ClothPlan> Plans(ClothFit fit)
    {
        ImmutableArray<Unplaced> unplaced = fit.More is null ? [.. fit.Missing.Select(Unplaced)] : [];
        if (fit.Layout is { } layout && (!layout.Marker.Placements.IsEmpty || fit.More is null))
            yield return layout with { Marker = layout.Marker with { Unplaced = unplaced } };
        if (fit.More is { } more)
            yield return more;
    }

    private static ClothFit Fit(Job job, Cloth cloth, SearchSettings settings)
    {
        ImmutableArray<Remnant> remnants = [.. job.Remnants.Where(remnant => remnant.Cloth == cloth.Name)];
        if (remnants.IsEmpty)
        {
            LayTask open = TaskOn(cloth, LaySurface.Open(cloth.UsableWidth), ClothWork.OrdersOf(job, cloth), job.System);
            return new ClothFit(cloth, null, Missing(open.Demands, _ => FitWords.NoLeftover(cloth.Name)), More(cloth, open.Demands, settings, job.System), []);
        }
        RemnantTable table = RemnantTable.Of(remnants);
        LayTask task = TaskOf(job, cloth, table);
        Fit fit = FitMaking.Make(task, table.Length, settings with { Stop = settings.Stop.Part(0, FitEnd) });
        ImmutableArray<Demand> left = [.. fit.LeftOut.Select(i => task.Demands[i])];
        ImmutableArray<MissingPiece> missing = [.. Missing(left, demand => ReasonFor(demand, task, table, job.System)), .. task.Impossible.Select(unplaced => new MissingPiece(FitWords.TitleOf(unplaced), 1, unplaced.Reason))];
        ClothFit verdict = new(cloth, PlanOf(cloth, fit.Marker, table, job.System), missing, null, []) { NotKept = FitNotes.NotKept(job, cloth), Notes = FitNotes.Of(job, cloth, task) };
        return missing.IsEmpty ? verdict : verdict with
        {
            Helps = [.. new FitHelps(job, cloth, task, left, table, settings with { Stop = settings.Stop.Part(FitEnd, HelpsEnd) }).All()],
            More = task.Impossible.IsEmpty ? More(cloth, left, settings with { Stop = settings.Stop.Part(HelpsEnd, 1) }, job.System) : null,
        };
    }

    /// <summary>What a job asks of the leftovers of one of its cloths.</summary>
    internal static LayTask TaskOf(Job job, Cloth cloth, RemnantTable table) =>
        TaskOn(cloth, LaySurface.Open(Longer(cloth.UsableWidth, table.Surface.Depth)), ClothWork.OrdersOf(job, cloth), job.System) with { Surface = table.Surface, Obstacles = table.Obstacles };

    /// <summary>The plan of a layout on leftovers; nothing is bought.</summary>
    internal static ClothPlan PlanOf(Cloth cloth, Marker marker, RemnantTable table, MeasureSystem system) =>
        new(cloth, marker, Purchasing.For(cloth, Length.Zero, system)) { Leftovers = table };

    /// <summary>What is asked of a cloth, copy by copy in one layer; its flaws and shades are those of the bolt and not of a leftover.</summary>
    private static LayTask TaskOn(Cloth cloth, LaySurface surface, ImmutableArray<PieceOrder> orders, MeasureSystem system) => LayRules.TaskFor(
        cloth with { Lay = surface.Form, Flaws = [], NearShade = Length.Zero, FarShade = Length.Zero }, surface, orders, LengthWords.WordingOf(system), _ => Layering.OneLayer);

    private static Length Longer(Length left, Length right) => left > right ? left : right;

    private static ImmutableArray<MissingPiece> Missing(ImmutableArray<Demand> demands, Func<Demand, string> reason) =>
    [
        .. demands.GroupBy(demand => (demand.Piece.Name, demand.Size))
            .Select(group => new MissingPiece(FitWords.TitleOf(group.First()), group.Count(), reason(group.First()))),
    ];

    private static string ReasonFor(Demand demand, LayTask task, RemnantTable table, MeasureSystem system)
    {
        if (!table.Places.Any(place => demand.Turns.Any(turn => RemnantTable.HasRoomFor(place.Remnant, turn.Apply(demand.Piece.CuttingLine)))))
            return FitWords.FitsNone(demand, table, system);
        double wanted = task.Demands.Sum(other => other.Piece.CuttingLine.AreaSquareMillimeters);
        double there = table.Places.Sum(place => place.Remnant.Area.AreaSquareMillimeters);
        return wanted > there ? FitWords.NotEnoughArea(wanted, there) : FitWords.NotFound();
    }

    /// <summary>The missing pieces laid open on the cloth as bought.</summary>
    private static ClothPlan? More(Cloth cloth, ImmutableArray<Demand> left, SearchSettings settings, MeasureSystem system)
    {
        LaySurface open = LaySurface.Open(cloth.UsableWidth);
        bool allFit = left.All(demand => demand.Turns.Any(turn => turn.Apply(demand.Piece.CuttingLine).Bounds.Height <= open.Depth.Micrometers));
        if (left.IsEmpty || !allFit)
            return null;
        Marker marker = MarkerMaking.Make(new LayTask(open, cloth.Gap, left, []), settings);
        return new ClothPlan(cloth, marker, Purchasing.For(cloth, marker.ClothLength, system));
    }
}
