using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Yardage;

/// <summary>Looks for what would make everything fit on the leftovers of a cloth: what the job permits first, then larger leftovers.</summary>
/// <param name="job">The job.</param>
/// <param name="cloth">One of its cloths.</param>
/// <param name="task">What was asked of its leftovers.</param>
/// <param name="left">The demands that found no place.</param>
/// <param name="table">The leftovers.</param>
/// <param name="settings">The search; its stop is shared by all tries.</param>
internal sealed class FitHelps(Job job, Cloth cloth, LayTask task, ImmutableArray<Demand> left, RemnantTable table, SearchSettings settings)
{
    private static readonly double[] LargerByMillimeters = [5, 10, 20, 30, 50, 100];
    private static readonly (string Direction, Point Unit)[] Directions = [("along", new Point(1, 0)), ("across", new Point(0, 1))];

    private readonly ImmutableArray<NarrowerAllowance> _permitted = NarrowerAllowances.Of(job, cloth);
    private int _tries;

    /// <summary>Narrower allowances and a seam where the job permits them, both together where neither is enough; leftovers a little larger.</summary>
    public IEnumerable<FitHelp> All()
    {
        FitHelp? narrower = Narrower();
        FitHelp? pieced = Pieced([]);
        FitHelp?[] permitted = [narrower, pieced, narrower is null && pieced is null && !_permitted.IsEmpty ? Pieced(_permitted) : null];
        return permitted.OfType<FitHelp>().Concat(Directions.Select(direction => Larger(direction.Direction, direction.Unit)).OfType<FitHelp>());
    }

    private int MostTries => 3 + _permitted.Length + Directions.Length * LargerByMillimeters.Length;

    /// <summary>As few narrower allowances as are enough: all of them first, then each is given back in turn and stays so where everything still fits.</summary>
    private FitHelp? Narrower()
    {
        if (_permitted.IsEmpty || Laid(table, TaskWith(_permitted)) is not { } layout)
            return null;
        ImmutableArray<NarrowerAllowance> chosen = _permitted;
        foreach (NarrowerAllowance one in _permitted.Where(_ => chosen.Length > 1))
        {
            if (Laid(table, TaskWith(chosen.Remove(one))) is not { } fewer)
                continue;
            chosen = chosen.Remove(one);
            layout = fewer;
        }
        return new FitHelp(FitWords.Narrower(chosen, job.System), layout, chosen);
    }

    private FitHelp? Pieced(ImmutableArray<NarrowerAllowance> narrower)
    {
        LayTask whole = TaskWith(narrower);
        ImmutableArray<Demand> divided = [.. whole.Demands.Where(MayBeDivided)];
        if (divided.IsEmpty)
            return null;
        LayTask tried = whole with { Demands = [.. whole.Demands.SelectMany(demand => MayBeDivided(demand) ? InTwo(demand) : [demand])] };
        return Laid(table, tried) is { } layout
            ? new FitHelp(FitWords.Pieced(divided.Select(FitWords.TitleOf).Distinct(), divided[0].Piece.PiecedAllowance!.Value, narrower, job.System), layout, narrower)
            : null;
    }

    private FitHelp? Larger(string direction, Point unit)
    {
        foreach (Length by in LargerByMillimeters.Select(Length.FromMillimeters))
        {
            if (Laid(table.Larger(by, unit), task) is not null)
                return new FitHelp(FitWords.Larger(by, direction, table.Places.Length, job.System), null, []);
        }
        return null;
    }

    private LayTask TaskWith(ImmutableArray<NarrowerAllowance> narrower) =>
        narrower.IsEmpty ? task : FitPlanner.TaskOf(NarrowerAllowances.With(job, cloth, narrower), cloth, table);

    private bool MayBeDivided(Demand demand) => demand.Piece.PiecedAllowance is not null
        && left.Any(other => other.Piece.Name == demand.Piece.Name && other.Size == demand.Size && other.Copy == demand.Copy);

    private static IEnumerable<Demand> InTwo(Demand demand)
    {
        ImmutableArray<Piece> parts = Piecing.InTwo(demand.Piece, demand.Piece.PiecedAllowance!.Value);
        return parts.IsEmpty ? [demand] : parts.Select(part => demand with { Piece = part });
    }

    /// <summary>The layout of everything; or <c>null</c> when none was found in this try's share of the search.</summary>
    private ClothPlan? Laid(RemnantTable on, LayTask tried)
    {
        StopRule share = settings.Stop.Part((double)_tries / MostTries, (double)(_tries + 1) / MostTries);
        _tries++;
        if (!tried.Impossible.IsEmpty)
            return null;
        Fit fit = FitMaking.Make(tried with { Surface = on.Surface, Obstacles = on.Obstacles }, on.Length, settings with { Stop = share });
        return fit.LeftOut.IsEmpty ? FitPlanner.PlanOf(cloth, fit.Marker, on, job.System) : null;
    }
}
