using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting.Matching;
using Nestmark.Nesting.Search;
using Nestmark.Nesting.Verification;

namespace Nestmark.Nesting;

/// <summary>The one door to the search: a pure function of its arguments.</summary>
public static class MarkerMaking
{
    /// <summary>Lays everything the task asks for, as short as the settings allow; verified exactly.</summary>
    /// <remarks>Even when cancelled at once the marker is complete: the greedy pass always ends.</remarks>
    /// <exception cref="ArgumentException">A demand has no turn in which it fits a band or a fold of the lay, or the lay is a mixed one.</exception>
    public static Marker Make(LayTask task, SearchSettings settings) => Make(task, settings, SearchTuning.Default);

    internal static Marker Make(LayTask task, SearchSettings settings, SearchTuning tuning)
    {
        if (task.Surface.Form == LayForm.Mixed)
            throw new ArgumentException("A mixed lay is made of two tasks, one for each section.", nameof(task));
        if (task.Demands.IsEmpty)
            return new Marker(task.Surface, Length.Zero, [], task.Impossible);
        foreach (Demand demand in task.Demands)
            Guard(task, demand);
        List<(SearchProblem Problem, LayState State)> lays = Search(task, settings, tuning);
        for (int i = lays.Count - 1; i >= 0; i--)
        {
            Marker marker = ToMarker(task, lays[i].Problem, lays[i].State);
            if (MarkerVerifier.Violations(task, marker).IsEmpty)
                return Snapped(task, marker);
        }
        Marker row = InRow(task);
        return MarkerVerifier.Violations(task, row).IsEmpty
            ? row
            : throw new InvalidOperationException("No sound marker was found, not even side by side. This is a fault of the program: please report it with the job.");
    }

    /// <summary>All complete lays found, the best one last.</summary>
    private static List<(SearchProblem Problem, LayState State)> Search(LayTask task, SearchSettings settings, SearchTuning tuning)
    {
        SearchProblem rough = SearchProblem.Of(task, tuning.Tolerance);
        SearchCrew crew = new(settings, tuning);
        Allowance greedy = new(settings.Stop, settings.Cancellation);
        greedy.RunUntil(tuning.GreedyPart);
        GreedyLay start = GreedyOrders.Best(rough, new RandomStream(settings.Seed, 0), () => greedy.IsSpent);
        settings.Report(new SearchProgress(Length.FromMicrometers((long)Math.Ceiling(start.State.Length)), 0));
        double exact = rough.IsSimplified ? tuning.ExactPart : 0;
        double explore = tuning.ExplorePart * (1 - exact);
        List<LayState> roughLays = crew.Run(rough, start, explore, 1 - exact);
        List<(SearchProblem, LayState)> lays = [.. roughLays.Select(state => (rough, state))];
        if (!rough.IsSimplified)
            return lays;
        SearchProblem fine = SearchProblem.Of(task, Length.Zero);
        GreedyLay best = new(roughLays[^1], SearchCrew.HeadingsOf(rough, roughLays[^1]));
        lays.AddRange(crew.Run(fine, best, 0, 1).Select(state => (fine, state)));
        return lays;
    }

    private static Marker ToMarker(LayTask task, SearchProblem problem, LayState state)
    {
        Placement[] placements = new Placement[task.Demands.Length];
        for (int i = 0; i < placements.Length; i++)
        {
            Point offset = new((long)Math.Round(state.X[i]), (long)Math.Round(state.Y[i]));
            placements[i] = ToPlacement(task.Demands[i], problem.Items[i].Ways[state.Way[i]].Turn, offset);
        }
        return Closed(task, placements, BarOf(problem, state));
    }

    /// <summary>x of a crosswise bar, where the print ties pieces.</summary>
    private static long? BarOf(SearchProblem problem, LayState state) => problem.Grid is { HoldsAnyAlong: true } ? (long)Math.Round(state.Phases[0]) : null;

    /// <summary>The marker with every placement moved to the nearest whole step of the task's coordinates, when it is sound and no longer so.</summary>
    /// <remarks>Brings shapes that fit each other exactly, which the search keeps a few micrometers apart, into contact.</remarks>
    private static Marker Snapped(LayTask task, Marker marker)
    {
        long step = Lattice.StepOf(task);
        if (step <= 1)
            return marker;
        Marker snapped = Closed(task, [.. marker.Placements.Select(placement => placement with { Offset = Lattice.Nearest(placement.Offset, step) })], null);
        bool isBetter = snapped.LayLength <= marker.LayLength && MarkerVerifier.Violations(task, snapped).IsEmpty;
        return isBetter ? snapped : marker;
    }

    /// <summary>Side by side along the lay, beyond all obstacles: the last resort, sound but where a fold across the cloth is too short.</summary>
    private static Marker InRow(LayTask task)
    {
        if (PrintGrid.Of(task) is { } grid)
            return InRow(task, grid);
        Placement[] placements = new Placement[task.Demands.Length];
        long x = task.Obstacles.IsEmpty ? 0 : Math.Max(0, task.Obstacles.Max(obstacle => obstacle.Area.Bounds.MaxX));
        for (int i = 0; i < placements.Length; i++)
        {
            Demand demand = task.Demands[i];
            Turn turn = demand.Turns.First(turn => Fits(task, demand, turn) && (demand.NapGroup.Length == 0 || NapHeading.Of(turn) == 0));
            Box room = turn.Apply(demand.Piece.CuttingLine).Bounds;
            Seat seat = Seat.Of(task.Surface, demand.Layers, demand.Contact, turn, room, Seat.CleanRoom(demand.Flaws, demand.Piece, turn)).First();
            placements[i] = ToPlacement(demand, turn, new Point(seat.X ?? x - room.MinX, seat.LowY));
            x += room.Width + task.Gap.Micrometers;
        }
        return Closed(task, placements, null);
    }

    /// <summary>The same, each piece at the next place that the print allows.</summary>
    private static Marker InRow(LayTask task, PrintGrid grid)
    {
        Placement[] placements = new Placement[task.Demands.Length];
        double[] phases = new double[grid.Count];
        grid.Begin(phases, 0);
        long end = task.Obstacles.IsEmpty ? 0 : Math.Max(0, task.Obstacles.Max(obstacle => obstacle.Area.Bounds.MaxX));
        for (int i = 0; i < placements.Length; i++)
        {
            HeldWay[] ways = grid.WaysOf(i) ?? [.. task.Demands[i].Turns.SelectMany(turn => HeldSeats.Of(task, task.Demands[i], turn).Select(seat =>
                new HeldWay(turn, seat, turn.Apply(task.Demands[i].Piece.CuttingLine).Bounds, 1, 1, 0)))];
            int way = Enumerable.Range(0, ways.Length).First(k => grid.HasPlace(phases, i, k) && (task.Demands[i].NapGroup.Length == 0 || NapHeading.Of(ways[k].Turn) == 0));
            double low = end - ways[way].Room.MinX;
            (double x, double y) = grid.Nearest(phases, i, way, low, ways[way].Seat.LowY, low, double.MaxValue);
            grid.Settle(phases, i, way, x);
            placements[i] = ToPlacement(task.Demands[i], ways[way].Turn, new Point((long)Math.Ceiling(x), (long)Math.Round(y)));
            end = placements[i].Offset.X + ways[way].Room.MaxX + task.Gap.Micrometers;
        }
        return Closed(task, placements, grid.HoldsAnyAlong ? (long)Math.Round(phases[0]) : null);
    }

    private static Placement ToPlacement(Demand demand, Turn turn, Point offset) =>
        new(demand.Piece, demand.Size, demand.Copy, demand.Layers, demand.Contact, turn, offset);

    /// <summary>Begins the lay at x = 0, unless it is anchored there, and ends it with its farthest placement.</summary>
    private static Marker Closed(LayTask task, Placement[] placements, long? bar)
    {
        Box[] rooms = [.. placements.Select(placement => placement.CuttingLine.Bounds)];
        bool isAnchored = !task.Obstacles.IsEmpty || task.Surface.Folds.Any(fold => fold.Side == FoldSide.Begin);
        long begin = isAnchored ? 0 : rooms.Min(room => room.MinX);
        ImmutableArray<Placement> moved = [.. placements.Select(placement => placement with { Offset = placement.Offset - new Point(begin, 0) })];
        return new Marker(task.Surface, Length.FromMicrometers(rooms.Max(room => room.MaxX) - begin), moved, task.Impossible)
        {
            FirstBar = FirstBarOf(task, bar - begin),
        };
    }

    /// <summary>A bar within the first repeat; where nothing depends on it, at the beginning, which is the easiest to lay.</summary>
    private static Length? FirstBarOf(LayTask task, long? bar)
    {
        if (bar is not { } place || task.Print!.Cloth.Repeat?.Along is not { } repeat)
            return null;
        return PrintGrid.Of(task) is { IsBarFree: true } ? Length.Zero : Length.FromMicrometers(LayPrint.Modulo(place, repeat.Micrometers));
    }

    private static void Guard(LayTask task, Demand demand)
    {
        if (!demand.Turns.Any(turn => Fits(task, demand, turn)))
            throw new ArgumentException($"{demand.Piece.Title} fits the lay in none of its turns.", nameof(task));
    }

    private static bool Fits(LayTask task, Demand demand, Turn turn) =>
        HeldSeats.Of(task, demand, turn).Any();
}
