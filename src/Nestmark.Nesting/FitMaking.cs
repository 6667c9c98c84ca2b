using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Nesting.Search;
using Nestmark.Nesting.Verification;

namespace Nestmark.Nesting;

/// <summary>Places as much as will go on cloth of a given size; the other door to the search, a pure function of its arguments.</summary>
public static class FitMaking
{
    /// <summary>Looks for a place for every demand; where that fails, for as much area of them as it can.</summary>
    /// <param name="task">What to place; its obstacles say where there is no cloth. A demand without a turn in which it fits is left out at once.</param>
    /// <param name="limit">Length of the lay.</param>
    /// <param name="settings">How the search runs; it uses one thread, and ends early when everything has a place.</param>
    /// <returns>Verified exactly. Demands that are left out are named by their index.</returns>
    public static Fit Make(LayTask task, Length limit, SearchSettings settings)
    {
        int[] possible = [.. Enumerable.Range(0, task.Demands.Length).Where(i => HasSeat(task, task.Demands[i], limit))];
        if (possible.Length == 0)
            return Outcome(task, []);
        LayTask tried = task with { Demands = [.. possible.Select(i => task.Demands[i])] };
        SearchProblem problem = SearchProblem.Of(tried, Length.Zero);
        Allowance allowance = new(settings.Stop, settings.Cancellation);
        allowance.RunUntil(1);
        LayState state = new Fitting(problem, SearchTuning.Default, new RandomStream(settings.Seed, 0), allowance, limit.Micrometers).Run();
        return Outcome(task, [.. Enumerable.Range(0, possible.Length).Where(i => state.Way[i] >= 0).Select(i => (possible[i], PlacementOf(tried, problem, state, i)))]);
    }

    private static bool HasSeat(LayTask task, Demand demand, Length limit) => demand.Turns.Any(turn =>
    {
        Box room = turn.Apply(demand.Piece.CuttingLine).Bounds;
        return room.Width <= limit.Micrometers
            && Seat.Of(task.Surface, demand.Layers, demand.Contact, turn, room, Seat.CleanRoom(demand.Flaws, demand.Piece, turn)).Any();
    });

    private static Placement PlacementOf(LayTask task, SearchProblem problem, LayState state, int i)
    {
        Demand demand = task.Demands[i];
        Point offset = new((long)Math.Round(state.X[i]), (long)Math.Round(state.Y[i]));
        return new Placement(demand.Piece, demand.Size, demand.Copy, demand.Layers, demand.Contact, problem.Items[i].Ways[state.Way[i]].Turn, offset);
    }

    /// <summary>The verified marker. Should the exact verifier refuse it, the last placements are left out until it is sound.</summary>
    private static Fit Outcome(LayTask task, ImmutableArray<(int Demand, Placement Placement)> placed)
    {
        for (; ; placed = placed.RemoveAt(placed.Length - 1))
        {
            ImmutableArray<Placement> placements = [.. placed.Select(pair => pair.Placement)];
            long end = placements.IsEmpty ? 0 : placements.Max(placement => placement.CuttingLine.Bounds.MaxX);
            Marker marker = new(task.Surface, Length.FromMicrometers(end), placements, task.Impossible);
            LayTask part = task with { Demands = [.. placed.Select(pair => task.Demands[pair.Demand])] };
            if (MarkerVerifier.Violations(part, marker).IsEmpty)
                return new Fit(marker, [.. Enumerable.Range(0, task.Demands.Length).Except(placed.Select(pair => pair.Demand))]);
        }
    }
}
