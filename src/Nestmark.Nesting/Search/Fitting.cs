namespace Nestmark.Nesting.Search;

/// <summary>Places as much as it can on a lay of fixed length: first one after another, then by adding what is left out and removing the overlaps that this makes.</summary>
internal sealed class Fitting
{
    private const int Attempts = 2;
    private const int Patience = 60;

    private readonly SearchProblem _problem;
    private readonly RandomStream _random;
    private readonly Allowance _allowance;
    private readonly OverlapRemoval _removal;
    private readonly SeverityTable _severities;
    private readonly double _limit;

    /// <param name="problem">What to place.</param>
    /// <param name="tuning">Numbers of the search.</param>
    /// <param name="random">Its chance.</param>
    /// <param name="allowance">Its allowance; the greedy passes run in any case.</param>
    /// <param name="limitMicrometers">Length of the lay.</param>
    public Fitting(SearchProblem problem, SearchTuning tuning, RandomStream random, Allowance allowance, double limitMicrometers)
    {
        _problem = problem;
        _random = random;
        _allowance = allowance;
        _removal = new OverlapRemoval(problem, tuning, random, allowance) { LeavesGrain = true };
        _severities = new SeverityTable(problem);
        _limit = limitMicrometers;
    }

    /// <summary>A lay without overlaps that holds the greatest area found; items left out have way -1.</summary>
    public LayState Run()
    {
        LayState best = Greedy();
        for (int round = 0; !IsComplete(best) && !_allowance.IsSpent; round++)
        {
            LayState state = best.Copy();
            state.Length = _limit;
            if (round % 4 == 0)
                Add(state, Missing(state));
            else
                Exchange(state);
            _severities.Fill(state);
            _allowance.Step();
            if (_removal.Run(state, SearchCrew.HeadingsOf(_problem, state), Attempts, Patience) && ValueOf(state) > ValueOf(best))
                best = state;
        }
        return best;
    }

    private LayState Greedy()
    {
        GreedyConstruction construction = new(_problem, GreedyLines.AtEnds, 1);
        LayState? best = null;
        foreach (int[] order in GreedyOrders.ByMeasure(_problem))
        {
            LayState state = construction.Lay(order, new int[_problem.GroupCount]);
            for (int item = 0; item < _problem.PieceCount; item++)
            {
                if (state.X[item] + _problem.Items[item].Ways[state.Way[item]].Room.MaxX > _limit)
                    state.Way[item] = -1;
            }
            if (best is null || ValueOf(state) > ValueOf(best))
                best = state;
        }
        return best!;
    }

    /// <summary>Adds one that is left out, by chance the larger ones sooner, and perhaps takes out one or two smaller ones for it.</summary>
    private void Exchange(LayState state)
    {
        int[] missing = Missing(state);
        int added = missing[Math.Min(_random.Below(missing.Length), _random.Below(missing.Length))];
        double room = _problem.Items[added].AreaSquareMicrometers;
        for (int i = _random.Below(3); i > 0; i--)
        {
            int[] smaller = [.. Placed(state).Where(item => _problem.Items[item].AreaSquareMicrometers < room)];
            if (smaller.Length == 0)
                break;
            int taken = smaller[_random.Below(smaller.Length)];
            state.Way[taken] = -1;
            room -= _problem.Items[taken].AreaSquareMicrometers;
        }
        Add(state, [added]);
    }

    private void Add(LayState state, int[] items)
    {
        int[] headings = SearchCrew.HeadingsOf(_problem, state);
        foreach (int item in items)
        {
            SearchItem found = _problem.Items[item];
            int[] ways = [.. Enumerable.Range(0, found.Ways.Length).Where(way => (found.Group < 0 || found.Ways[way].Heading == headings[found.Group]) && _problem.HighX(item, way, _limit) >= _problem.LowX(item, way))];
            if (ways.Length == 0)
                continue;
            int way = ways[_random.Below(ways.Length)];
            state.Way[item] = way;
            state.X[item] = _random.Between(_problem.LowX(item, way), _problem.HighX(item, way, _limit));
            state.Y[item] = _random.Between(_problem.LowY(item, way), _problem.HighY(item, way));
        }
    }

    /// <summary>What is left out, largest first.</summary>
    private int[] Missing(LayState state) => [.. Enumerable.Range(0, _problem.PieceCount).Where(item => state.Way[item] < 0).OrderByDescending(item => _problem.Items[item].AreaSquareMicrometers)];

    private IEnumerable<int> Placed(LayState state) => Enumerable.Range(0, _problem.PieceCount).Where(item => state.Way[item] >= 0);

    private bool IsComplete(LayState state) => Placed(state).Count() == _problem.PieceCount;

    private double ValueOf(LayState state) => Placed(state).Sum(item => _problem.Items[item].AreaSquareMicrometers);
}
