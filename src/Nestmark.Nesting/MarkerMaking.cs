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
    /// <remarks>Even when cancelled at once the marker is complete: pieces laid by their bounds always are, and that takes little time.</remarks>
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
        throw new InvalidOperationException("No sound marker was found, not even one laid by the bounds of the pieces. This is a fault of the program: please report it with the job.");
    }

    /// <summary>All complete lays found, the best one last.</summary>
    private static List<(SearchProblem Problem, LayState State)> Search(LayTask task, SearchSettings settings, SearchTuning tuning)
    {
        SearchCrew crew = new(settings);
        SearchProblem bounds = SearchProblem.OfBounds(task);
        GreedyLay first = GreedyOrders.LargestFirst(bounds, GreedyLines.Even);
        List<(SearchProblem, LayState)> lays = [(bounds, first.State)];
        if (MarkerVerifier.Violations(task, ToMarker(task, bounds, first.State)).IsEmpty)
            Report(settings, first.State);
        SearchProblem rough = SearchProblem.Of(task, tuning.Tolerance);
        if (Greedy(rough, settings, tuning) is not { } greedy)
            return lays;
        GreedyLay start = greedy.State.Length < first.State.Length ? greedy : first;
        if (start == greedy)
            Report(settings, start.State);
        double exact = rough.IsSimplified ? tuning.ExactPart : 0;
        double explore = tuning.ExplorePart * (1 - exact);
        List<LayState> roughLays = crew.Run(rough, tuning, start, explore, 1 - exact);
        lays.AddRange(roughLays.Select(state => (rough, state)));
        if (!rough.IsSimplified)
            return lays;
        SearchProblem fine = SearchProblem.Of(task, Length.Zero);
        GreedyLay best = new(roughLays[^1], SearchCrew.HeadingsOf(rough, roughLays[^1]));
        lays.AddRange(crew.Run(fine, tuning.ForExactOutlines(), best, 0, 1).Select(state => (fine, state)));
        return lays;
    }

    /// <summary>The best of some greedy lays; <c>null</c> when the search was cancelled before the first was complete.</summary>
    private static GreedyLay? Greedy(SearchProblem problem, SearchSettings settings, SearchTuning tuning)
    {
        Allowance allowance = new(settings.Stop, settings.Cancellation);
        allowance.RunUntil(tuning.GreedyPart);
        return GreedyOrders.Best(problem, new RandomStream(settings.Seed, 0), settings.Threads, () => allowance.IsSpent, () => settings.Cancellation.IsCancellationRequested);
    }

    private static void Report(SearchSettings settings, LayState state) =>
        settings.Report(new SearchProgress(Length.FromMicrometers((long)Math.Ceiling(state.Length)), 0));

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
