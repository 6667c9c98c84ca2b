namespace Nestmark.Nesting.Search;

/// <summary>One thread's search: shortens the lay a little, removes the overlaps that this makes, and again.</summary>
/// <remarks>
/// While exploring, lays that cannot be freed are kept; one of the least severe is disturbed and tried again, until one comes free and all are forgotten.
/// A run that has gained nothing for a long time, beside what it took to come so far, is left for another from a new greedy lay.
/// While compressing, every try starts from the best lay,
/// and pieces may lean from the grain as far as they are allowed to.
/// Stages after J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, section 9; step sizes are our own, for short runs.
/// </remarks>
internal sealed class Shortening
{
    private readonly SearchProblem _problem;
    private readonly SearchTuning _tuning;
    private readonly RandomStream _random;
    private readonly Allowance _allowance;
    private readonly OverlapRemoval _removal;
    private readonly GreedyConstruction _greedy;
    private readonly LayState _run;
    private readonly int[] _runHeadings;
    private readonly LayState _state;
    private readonly SeverityTable _severities;
    private readonly Disturbance _disturbance;
    private readonly StuckPool _stuck;
    private readonly int[] _headings;
    private readonly int[] _bestHeadings;
    private double _step;
    private long _begunAt;
    private long _gainedAt;

    public Shortening(SearchProblem problem, SearchTuning tuning, RandomStream random, Allowance allowance, LayState start, ReadOnlySpan<int> headings)
    {
        _problem = problem;
        _tuning = tuning;
        _random = random;
        _allowance = allowance;
        _removal = new OverlapRemoval(problem, tuning, random, allowance);
        Best = start.Copy();
        _greedy = new GreedyConstruction(problem, GreedyLines.AtEnds, 1);
        _run = start.Copy();
        _runHeadings = headings.ToArray();
        _state = start.Copy();
        _severities = new SeverityTable(problem);
        _disturbance = new Disturbance(problem, random);
        _stuck = new StuckPool(tuning, random);
        _headings = headings.ToArray();
        _bestHeadings = headings.ToArray();
        _step = tuning.FirstShortening;
        _begunAt = _gainedAt = allowance.Steps;
    }

    /// <summary>The shortest lay without overlaps so far.</summary>
    public LayState Best { get; }

    /// <summary>Headings of the nap groups in it.</summary>
    public ReadOnlySpan<int> BestHeadings => _bestHeadings;

    /// <summary>Called after each better lay.</summary>
    public Action<LayState> Improved { get; set; } = _ => { };

    /// <summary>Runs begun so far, each from a lay of its own.</summary>
    public int Runs { get; private set; } = 1;

    /// <summary>Places judged so far.</summary>
    public long JudgedPlaces => _removal.JudgedPlaces;

    private bool IsDone => _allowance.IsSpent || Best.Length <= _problem.LowerBoundMicrometers * (1 + 1e-6);

    /// <summary>Takes over a lay of another thread when it is a good deal shorter; otherwise two different lays promise more than one.</summary>
    public void Adopt(LayState other, ReadOnlySpan<int> headings)
    {
        if (other.Length >= Best.Length * (1 - _tuning.AdoptFrom))
            return;
        Best.Take(other);
        headings.CopyTo(_bestHeadings);
        if (Runs == 1)
            ReturnToBest();
    }

    /// <summary>Explores until the stage is over.</summary>
    /// <param name="end">Spent ratio at which the last stage of exploring ends.</param>
    public void Explore(double end)
    {
        while (!IsDone)
        {
            if (IsStale(end))
                BeginAnew();
            if (_stuck.IsEmpty)
                Restart(_step);
            else
                Disturb();
            if (_removal.Run(_state, _headings, _tuning.ExploreAttempts, _tuning.ExplorePatience))
            {
                Keep();
                _step = Math.Min(_step * 1.5, _tuning.FirstShortening);
                _stuck.Clear();
            }
            else if (!_allowance.IsSpent)
            {
                _stuck.Add(_state, _headings);
                _step = Math.Max(_step * _tuning.ShorteningDecay, _tuning.LastShortening);
            }
        }
    }

    /// <summary>Compresses until the stage is over.</summary>
    /// <param name="from">Spent ratio at which compressing began.</param>
    /// <param name="to">Spent ratio at which it ends.</param>
    public void Compress(double from, double to)
    {
        _removal.LeavesGrain = true;
        ReturnToBest();
        while (!IsDone)
        {
            double part = Math.Clamp((_allowance.SpentRatio - from) / Math.Max(1e-9, to - from), 0, 1);
            Restart(_tuning.CompressFirst + part * (_tuning.CompressLast - _tuning.CompressFirst));
            if (_removal.Run(_state, _headings, _tuning.CompressAttempts, _tuning.CompressPatience))
                Keep();
        }
    }

    /// <summary>Whether the present run has stood still for long and there is time for another to come as far.</summary>
    private bool IsStale(double end)
    {
        long taken = Math.Max(_gainedAt - _begunAt, _tuning.LeastRun * _problem.PieceCount);
        double spent = _allowance.SpentRatio;
        double left = _allowance.Steps * (end - spent) / Math.Max(spent, 1e-9);
        return _allowance.Steps - _gainedAt > _tuning.RunPatience * taken && left > taken;
    }

    /// <summary>Leaves the present run for one from a new greedy lay; goes on with it when there is no time to make that.</summary>
    private void BeginAnew()
    {
        if (GreedyOrders.Random(_problem, _greedy, _random, () => _allowance.IsSpent) is not { } greedy)
            return;
        Begin(greedy.State, greedy.Headings);
        _begunAt = _allowance.Steps;
        Runs++;
    }

    private void ReturnToBest() => Begin(Best, _bestHeadings);

    private void Begin(LayState lay, ReadOnlySpan<int> headings)
    {
        _run.Take(lay);
        headings.CopyTo(_runHeadings);
        _stuck.Clear();
        _step = _tuning.FirstShortening;
        _gainedAt = _allowance.Steps;
    }

    private void Restart(double step)
    {
        _state.Take(_run);
        _runHeadings.CopyTo(_headings.AsSpan());
        if (_problem.Grid is { } grid && _random.Below(3) == 0)
            MovePrint(grid);
        Shorten(_run.Length * (1 - step));
    }

    /// <summary>Everything right of a random cut moves left by what the lay loses; nothing stays outside.</summary>
    private void Shorten(double length)
    {
        length = Math.Max(length, _problem.LowerBoundMicrometers);
        double loss = _state.Length - length;
        double cut = _random.Ratio() * length;
        int leader = _problem.Grid is null ? -1 : _random.Below(_problem.PieceCount);
        _state.Length = length;
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            if (_state.X[item] > cut)
                _state.X[item] -= loss;
            if (leader == item)
                _problem.Grid!.Lead(_state.Phases, item, _state.Way[item], _state.X[item]);
        }
        for (int item = 0; item < _problem.PieceCount; item++)
            KeepInside(item);
        _severities.Fill(_state);
    }

    private void KeepInside(int item)
    {
        if (_problem.HighX(item, _state.Way[item], _state.Length) < _problem.LowX(item, _state.Way[item]))
            _state.Way[item] = ShorterWay(item);
        int way = _state.Way[item];
        double low = _problem.LowX(item, way);
        _state.X[item] = Math.Clamp(_state.X[item], low, Math.Max(low, _problem.HighX(item, way, _state.Length)));
        _state.Y[item] = Math.Clamp(_state.Y[item], _problem.LowY(item, way), _problem.HighY(item, way));
        if (_problem.Grid is { } grid)
        {
            double highX = _problem.HighX(item, way, _state.Length);
            (_state.X[item], _state.Y[item]) = grid.Nearest(_state.Phases, item, way, _state.X[item], _state.Y[item], low, highX);
        }
    }

    private void Disturb()
    {
        _stuck.Pick(_state, _headings);
        _state.Length = Math.Max(_state.Length, _run.Length * (1 - _step));
        if (_problem.Grid is not null && _random.Below(4) == 0)
            MovePrint(_problem.Grid);
        else if (_problem.GroupCount > 1 && _random.Below(8) == 0)
            TurnGroup(_random.Below(_problem.GroupCount));
        else
            _disturbance.SwapTwo(_state);
        for (int item = 0; item < _problem.PieceCount; item++)
            KeepInside(item);
        _severities.Fill(_state);
    }

    /// <summary>Moves a group of tied items, or all of them, to another place of the repeat.</summary>
    private void MovePrint(PrintGrid grid)
    {
        grid.Disturb(_state.Phases, _random);
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            if (!grid.HasPlace(_state.Phases, item, _state.Way[item]))
                _state.Way[item] = OtherWay(grid, item);
            KeepInside(item);
        }
    }

    /// <summary>A way that the lay is long enough for; the present one where there is none.</summary>
    private int ShorterWay(int item)
    {
        SearchItem found = _problem.Items[item];
        for (int way = 0; way < found.Ways.Length; way++)
        {
            if ((found.Group < 0 || found.Ways[way].Heading == _headings[found.Group])
                && _problem.HighX(item, way, _state.Length) >= _problem.LowX(item, way)
                && (_problem.Grid is not { } grid || grid.HasPlace(_state.Phases, item, way)))
                return way;
        }
        return _state.Way[item];
    }

    private int OtherWay(PrintGrid grid, int item)
    {
        SearchWay[] ways = _problem.Items[item].Ways;
        int group = _problem.Items[item].Group;
        int way = Enumerable.Range(0, ways.Length).Where(i => (group < 0 || ways[i].Heading == _headings[group]) && grid.HasPlace(_state.Phases, item, i)).DefaultIfEmpty(-1).First();
        return way < 0 ? _state.Way[item] : way;
    }

    /// <summary>Turns every item of a nap group half round.</summary>
    private void TurnGroup(int group)
    {
        _headings[group] = 1 - _headings[group];
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            if (_problem.Items[item].Group != group)
                continue;
            int way = _problem.Grid is { } grid && grid.WaysOf(item) is not null
                ? OtherWay(grid, item)
                : Array.FindIndex(_problem.Items[item].Ways, found => found.Heading == _headings[group]);
            if (way >= 0)
                _state.Way[item] = way;
            KeepInside(item);
        }
    }

    private void Keep()
    {
        LayEnds.Tighten(_problem, _state);
        if (_state.Length >= _run.Length)
        {
            // A piece may find no place within the shorter lay, and then nothing overlaps and nothing is won: counted, or a search by steps would not end.
            _allowance.Step();
            return;
        }
        _run.Take(_state);
        _headings.CopyTo(_runHeadings.AsSpan());
        _gainedAt = _allowance.Steps;
        if (_state.Length >= Best.Length)
            return;
        Best.Take(_state);
        _headings.CopyTo(_bestHeadings.AsSpan());
        Improved(Best);
    }
}
