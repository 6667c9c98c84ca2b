using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Yardage;

/// <summary>Whether the pieces of a job come out of leftovers, from which, and what is missing.</summary>
public static class FitPlanner
{
    private const double FitEnd = 0.5;
    private const double HelpsEnd = 0.85;

    private static readonly double[] LargerByMillimeters = [5, 10, 20, 30, 50, 100];

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
        Plan plan = new(job, effort, [.. fits.Select(fit => fit.Layout).OfType<ClothPlan>()], []);
        return new FitPlan(plan, [.. fits]);
    }

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
        return new Plan(job, effort, [.. fit.Cloths.SelectMany(Plans), .. rest.Cloths], rest.Notes);
    }

    private static IEnumerable<ClothPlan> Plans(ClothFit fit)
    {
        ImmutableArray<Unplaced> unplaced = fit.More is null ? [.. fit.Missing.Select(missing => new Unplaced(missing.Title, "", $"{missing.Title}: {missing.Reason}"))] : [];
        if (fit.Layout is { } layout && (!layout.Marker.Placements.IsEmpty || fit.More is null))
            yield return layout with { Marker = layout.Marker with { Unplaced = unplaced } };
        if (fit.More is { } more)
            yield return more;
    }

    private static ClothFit Fit(Job job, Cloth cloth, SearchSettings settings)
    {
        ImmutableArray<Remnant> remnants = [.. job.Remnants.Where(remnant => remnant.Cloth == cloth.Name)];
        ImmutableArray<PieceOrder> orders = ClothWork.OrdersOf(job, cloth);
        if (remnants.IsEmpty)
        {
            LayTask open = TaskOn(cloth, LaySurface.Open(cloth.UsableWidth), orders, job.System);
            return new ClothFit(cloth, null, Missing(open.Demands, _ => FitWords.NoLeftover(cloth.Name)), More(cloth, open.Demands, settings, job.System), []);
        }
        RemnantTable table = RemnantTable.Of(remnants);
        LayTask task = TaskOn(cloth, LaySurface.Open(Longer(cloth.UsableWidth, table.Surface.Depth)), orders, job.System) with { Surface = table.Surface, Obstacles = table.Obstacles };
        Fit fit = FitMaking.Make(task, table.Length, settings with { Stop = settings.Stop.Part(0, FitEnd) });
        ImmutableArray<Demand> left = [.. fit.LeftOut.Select(i => task.Demands[i])];
        ClothPlan layout = PlanOf(cloth, fit.Marker, job.System) with { Leftovers = table };
        ImmutableArray<MissingPiece> missing = [.. Missing(left, demand => ReasonFor(demand, task, table, job.System)), .. task.Impossible.Select(unplaced => new MissingPiece(TitleOf(unplaced), 1, unplaced.Reason))];
        if (missing.IsEmpty)
            return new ClothFit(cloth, layout, [], null, []);
        ImmutableArray<string> helps = [.. Helps(task, left, table, settings, job.System)];
        return new ClothFit(cloth, layout, missing, More(cloth, left, settings with { Stop = settings.Stop.Part(HelpsEnd, 1) }, job.System), helps);
    }

    /// <summary>What is asked of a cloth, copy by copy in one layer; its flaws and shades are those of the bolt and not of a leftover.</summary>
    private static LayTask TaskOn(Cloth cloth, LaySurface surface, ImmutableArray<PieceOrder> orders, MeasureSystem system) => LayRules.TaskFor(
        cloth with { Lay = surface.Form, Flaws = [], NearShade = Length.Zero, FarShade = Length.Zero }, surface, orders, LengthWords.WordingOf(system), _ => Layering.OneLayer);

    private static Length Longer(Length left, Length right) => left > right ? left : right;

    private static ClothPlan PlanOf(Cloth cloth, Marker marker, MeasureSystem system) => new(cloth, marker, Purchasing.For(cloth, Length.Zero, system));

    private static ImmutableArray<MissingPiece> Missing(ImmutableArray<Demand> demands, Func<Demand, string> reason) =>
    [
        .. demands.GroupBy(demand => (demand.Piece.Name, demand.Size))
            .Select(group => new MissingPiece(TitleOf(group.First()), group.Count(), reason(group.First()))),
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

    /// <summary>A seam where the job allows one; leftovers a little larger.</summary>
    private static IEnumerable<string> Helps(LayTask task, ImmutableArray<Demand> left, RemnantTable table, SearchSettings settings, MeasureSystem system)
    {
        double share = (HelpsEnd - FitEnd) / (1 + 2 * LargerByMillimeters.Length);
        int tries = 0;
        ImmutableArray<Demand> pieced = Pieced(task.Demands, left);
        if (!pieced.IsEmpty && FitsOn(table, task with { Demands = pieced }))
            yield return FitWords.Pieced(left.Where(MayBePieced).Select(TitleOf).Distinct(), left.First(MayBePieced).Piece.PiecedAllowance!.Value, system);
        foreach ((string direction, Point unit) in ((string, Point)[])[("along", new Point(1, 0)), ("across", new Point(0, 1))])
        {
            Length? least = LargerByMillimeters.Select(Length.FromMillimeters).Cast<Length?>().FirstOrDefault(by => FitsOn(table.Larger(by!.Value, unit), task));
            if (least is { } enough)
                yield return FitWords.Larger(enough, direction, table.Places.Length, system);
        }

        bool FitsOn(RemnantTable on, LayTask tried) => FitMaking.Make(
            tried with { Surface = on.Surface, Obstacles = on.Obstacles }, on.Length,
            settings with { Stop = settings.Stop.Part(FitEnd + tries * share, FitEnd + ++tries * share) }).LeftOut.IsEmpty;
    }

    private static bool MayBePieced(Demand demand) => demand.Piece.PiecedAllowance is not null;

    /// <summary>The demands with those of the missing ones divided that may be; empty when none may.</summary>
    private static ImmutableArray<Demand> Pieced(ImmutableArray<Demand> all, ImmutableArray<Demand> left) =>
        left.Any(MayBePieced) ? [.. all.SelectMany(demand => left.Contains(demand) && MayBePieced(demand) ? InTwo(demand) : [demand])] : [];

    private static IEnumerable<Demand> InTwo(Demand demand)
    {
        ImmutableArray<Piece> parts = Piecing.InTwo(demand.Piece, demand.Piece.PiecedAllowance!.Value);
        return parts.IsEmpty ? [demand] : parts.Select(part => demand with { Piece = part });
    }

    private static string TitleOf(Demand demand) => demand.Size.Length == 0 ? demand.Piece.Name : demand.Piece.Name + " " + demand.Size;

    private static string TitleOf(Unplaced unplaced) => unplaced.Size.Length == 0 ? unplaced.Piece : unplaced.Piece + " " + unplaced.Size;
}
