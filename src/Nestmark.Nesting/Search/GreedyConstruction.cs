namespace Nestmark.Nesting.Search;

/// <summary>Lays items one after another, each at the place that reaches least far along the lay; gives a complete lay at once.</summary>
/// <remarks>
/// For each item and way the places are searched exactly along horizontal lines: the free stretches between the no-fit polygons of what already lies there.
/// The lines run at both edges of the lay, at the upper and lower ends of the no-fit polygons, and at even steps between.
/// </remarks>
internal sealed class GreedyConstruction
{
    private const int EvenLines = 16;

    private readonly SearchProblem _problem;
    private readonly Surroundings _laid;
    private readonly Overlaps[] _overlaps;
    private readonly List<double> _lines = [];
    private readonly List<double> _places = [];
    private readonly PrintGrid? _grid;
    private readonly GreedyLines _kind;
    private readonly ParallelOptions _threads;
    private int _lays;

    /// <param name="problem">What to lay.</param>
    /// <param name="lines">Along which lines it looks for places.</param>
    /// <param name="threads">Threads that make no-fit polygons, 1 or more; they change nothing in the lay.</param>
    public GreedyConstruction(SearchProblem problem, GreedyLines lines, int threads)
    {
        _problem = problem;
        _threads = new ParallelOptions { MaxDegreeOfParallelism = threads };
        _kind = lines;
        _grid = problem.Grid;
        _laid = new Surroundings(problem);
        _overlaps = [.. Enumerable.Range(0, problem.Items.Max(item => item.Ways.Length)).Select(_ => new Overlaps(problem, _laid, PairTable.Empty))];
    }

    /// <summary>A lay without overlaps, its length that of its items.</summary>
    /// <param name="order">Every item once.</param>
    /// <param name="headings">Heading of each nap group.</param>
    public LayState Lay(ReadOnlySpan<int> order, ReadOnlySpan<int> headings) => Lay(order, headings, () => false)!;

    /// <summary>The same, given up as soon as it is asked for.</summary>
    /// <param name="order">As above.</param>
    /// <param name="headings">As above.</param>
    /// <param name="isGivenUp">Asked before each item.</param>
    /// <returns><c>null</c> when it was given up.</returns>
    public LayState? Lay(ReadOnlySpan<int> order, ReadOnlySpan<int> headings, Func<bool> isGivenUp)
    {
        LayState state = _problem.EmptyState();
        _laid.Clear();
        _grid?.Begin(state.Phases, _lays++);
        foreach (int item in order)
        {
            if (isGivenUp())
                return null;
            Place(state, item, headings);
        }
        return state;
    }

    private void Place(LayState state, int item, ReadOnlySpan<int> headings)
    {
        SearchItem found = _problem.Items[item];
        MakeFits(state, item);
        Spot best = new(double.MaxValue, 0, 0, -1);
        for (int way = 0; way < found.Ways.Length; way++)
        {
            if (!IsTried(found, way))
                continue;
            if (found.Group >= 0 && found.Ways[way].Heading != headings[found.Group])
                continue;
            if (_grid is not null && !_grid.HasPlace(state.Phases, item, way))
                continue;
            Overlaps overlaps = _overlaps[way];
            overlaps.Prepare(item, way);
            CollectLines(state, item, way);
            for (int line = 0; line < _lines.Count; line++)
            {
                if (line == 0 || _lines[line] > _lines[line - 1])
                    best = Better(best, FirstFree(state, overlaps, item, way, _lines[line], best.End));
            }
        }
        if (best.Way < 0)
            best = BehindAll(state, item);
        (state.X[item], state.Y[item], state.Way[item]) = (best.X, best.Y, best.Way);
        _laid.Put(item, best.Way, best.X, best.Y);
        _grid?.Settle(state.Phases, item, best.Way, best.X);
        state.Length = Math.Max(state.Length, best.End);
    }

    /// <summary>Makes the no-fit polygons that placing an item will ask for, on all threads.</summary>
    private void MakeFits(LayState state, int item)
    {
        if (_threads.MaxDegreeOfParallelism == 1)
            return;
        Parallel.For(0, _problem.PieceCount, _threads, other =>
        {
            if (other == item || state.Way[other] < 0)
                return;
            int laid = _problem.Items[other].Ways[state.Way[other]].Shape;
            SearchItem found = _problem.Items[item];
            for (int way = 0; way < found.Ways.Length; way++)
            {
                if (IsTried(found, way))
                    _ = _problem.Sides.FitOf(laid, found.Ways[way].Shape);
            }
        });
    }

    /// <summary>Tilted ways are left to the search where a piece may lie straight: they would make this pass several times as long.</summary>
    private static bool IsTried(SearchItem item, int way) => !item.Ways[way].IsTilted || Array.TrueForAll(item.Ways, found => found.IsTilted);

    /// <summary>Beyond everything laid so far: free whatever happens.</summary>
    private Spot BehindAll(LayState state, int item)
    {
        double end = Math.Max(state.Length, _problem.ObstaclesEndMicrometers);
        int way = _grid is null ? 0 : Math.Max(0, Array.FindIndex(_problem.Items[item].Ways, found => _grid.HasPlace(state.Phases, item, Array.IndexOf(_problem.Items[item].Ways, found))));
        double x = Math.Ceiling(end) + _problem.GapMicrometers + _problem.LowX(item, way);
        double y = _problem.LowY(item, way);
        if (_grid is not null)
            (x, y) = _grid.Nearest(state.Phases, item, way, x, y, x, double.MaxValue);
        return new Spot(x + _problem.Items[item].Ways[way].Room.MaxX, x, y, way);
    }

    private void CollectLines(LayState state, int item, int way)
    {
        _lines.Clear();
        double low = _problem.LowY(item, way);
        double high = _problem.HighY(item, way);
        _lines.Add(low);
        if (high <= low)
            return;
        _lines.Add(high);
        for (int i = 1; i < EvenLines; i++)
            _lines.Add(Math.Round(low + (high - low) * i / EvenLines));
        if (_kind == GreedyLines.AtEnds)
            _lines.AddRange(_overlaps[way].UprightEnds().Where(end => end > low && end < high));
        if (_grid is not null && _grid.HoldsAcross(item))
            SnapLines(state, item, way, low, high);
        _lines.Sort();
    }

    /// <summary>The lines at whole repeats beside those collected.</summary>
    private void SnapLines(LayState state, int item, int way, double low, double high)
    {
        double repeat = _grid!.RepeatAcross(item);
        double[] snapped = [.. _lines.SelectMany(y => new[] { y - repeat / 2, y + repeat / 2 })
            .Select(y => _grid.Nearest(state.Phases, item, way, 0, y, 0, 0).Y).Where(y => y >= low - 0.5 && y <= high + 0.5).Distinct()];
        _lines.Clear();
        _lines.AddRange(snapped);
    }

    /// <summary>The first free place on a horizontal line; its end is beyond the limit when there is none short of it.</summary>
    private Spot FirstFree(LayState state, Overlaps overlaps, int item, int way, double y, double limit)
    {
        double room = _problem.Items[item].Ways[way].Room.MaxX;
        double low = _problem.LowX(item, way);
        if (_grid is not null)
            low = _grid.AtOrBehind(state.Phases, item, way, low);
        Spot none = new(double.MaxValue, 0, 0, -1);
        if (low + room >= limit)
            return none;
        if (overlaps.IsFree(low, y))
            return new Spot(low + room, low, y, way);
        if (_problem.Items[item].Ways[way].Seat.X is not null)
            return none;
        _places.Clear();
        overlaps.AddPlacesAlong(y, low, limit, _places);
        _places.Sort();
        foreach (double crossing in _places)
        {
            double x = Math.Ceiling(crossing);
            if (_grid is not null)
                x = _grid.AtOrBehind(state.Phases, item, way, x);
            if (x + room >= limit)
                return none;
            if (overlaps.IsFree(x, y))
                return new Spot(x + room, x, y, way);
        }
        return none;
    }

    private static Spot Better(Spot best, Spot other) => other.End < best.End ? other : best;

    private readonly record struct Spot(double End, double X, double Y, int Way);
}
