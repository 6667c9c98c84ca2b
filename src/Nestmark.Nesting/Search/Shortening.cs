namespace Nestmark.Nesting.Search;

/// <summary>One thread's search: shortens the lay a little, removes the overlaps that this makes, and again.</summary>
/// <remarks>
/// While exploring, a lay that cannot be freed is disturbed and tried again; whether it or the one before it is disturbed next is decided as in
/// simulated annealing, colder as the allowance is spent. While compressing, every try starts from the best lay.
/// Stages after J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, section 9; step sizes are our own, for short runs.
/// </remarks>
internal sealed class Shortening
{
    private readonly SearchProblem _problem;
    private readonly SearchTuning _tuning;
    private readonly RandomStream _random;
    private readonly Allowance _allowance;
    private readonly OverlapRemoval _removal;
    private readonly LayState _state;
    private readonly LayState _anchor;
    private readonly int[] _headings;
    private readonly int[] _bestHeadings;
    private double _anchorSeverity = double.MaxValue;
    private double _step;

    public Shortening(SearchProblem problem, SearchTuning tuning, RandomStream random, Allowance allowance, LayState start, ReadOnlySpan<int> headings)
    {
        _problem = problem;
        _tuning = tuning;
        _random = random;
        _allowance = allowance;
        _removal = new OverlapRemoval(problem, tuning, random, allowance);
        Best = start.Copy();
        _state = start.Copy();
        _anchor = start.Copy();
        _headings = headings.ToArray();
        _bestHeadings = headings.ToArray();
        _step = tuning.FirstShortening;
    }

    /// <summary>The shortest lay without overlaps so far.</summary>
    public LayState Best { get; }

    /// <summary>Headings of the nap groups in it.</summary>
    public ReadOnlySpan<int> BestHeadings => _bestHeadings;

    /// <summary>Called after each better lay.</summary>
    public Action<LayState> Improved { get; set; } = _ => { };

    /// <summary>Places judged so far.</summary>
    public long JudgedPlaces => _removal.JudgedPlaces;

    private bool IsDone => _allowance.IsSpent || Best.Length <= _problem.LowerBoundMicrometers * (1 + 1e-6);

    /// <summary>Takes over a lay of another thread when it is shorter.</summary>
    public void Adopt(LayState other, ReadOnlySpan<int> headings)
    {
        if (other.Length >= Best.Length)
            return;
        Best.Take(other);
        headings.CopyTo(_bestHeadings);
        _anchorSeverity = double.MaxValue;
    }

    /// <summary>Explores until the stage is over.</summary>
    public void Explore()
    {
        while (!IsDone)
        {
            if (_anchorSeverity == double.MaxValue)
                Restart(_step);
            else
                Disturb();
            if (_removal.Run(_state, _headings, _tuning.ExploreAttempts, _tuning.ExplorePatience))
            {
                Keep();
                _step = Math.Min(_step * 1.5, _tuning.FirstShortening);
                _anchorSeverity = double.MaxValue;
            }
            else if (!_allowance.IsSpent)
            {
                Anneal();
            }
        }
    }

    /// <summary>Compresses until the stage is over.</summary>
    /// <param name="from">Spent ratio at which compressing began.</param>
    /// <param name="to">Spent ratio at which it ends.</param>
    public void Compress(double from, double to)
    {
        while (!IsDone)
        {
            double part = Math.Clamp((_allowance.SpentRatio - from) / Math.Max(1e-9, to - from), 0, 1);
            Restart(_tuning.CompressFirst + part * (_tuning.CompressLast - _tuning.CompressFirst));
            if (_removal.Run(_state, _headings, _tuning.CompressAttempts, _tuning.CompressPatience))
                Keep();
        }
    }

    private void Restart(double step)
    {
        _state.Take(Best);
        _bestHeadings.CopyTo(_headings.AsSpan());
        if (_problem.Grid is { } grid && _random.Below(3) == 0)
            MovePrint(grid);
        Shorten(Best.Length * (1 - step));
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
        Refresh();
    }

    private void KeepInside(int item)
    {
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

    private void Refresh() => SeverityTable.Fill(_problem, _state);

    /// <summary>Decides from which stuck lay to go on, and lets the lay grow back a little after repeated failures.</summary>
    private void Anneal()
    {
        double severity = _state.TotalSeverity();
        double heat = _tuning.AnnealHeat * (1 - _allowance.SpentRatio);
        bool accepted = severity <= _anchorSeverity
            || _random.Ratio() < Math.Exp(-(severity - _anchorSeverity) / Math.Max(1e-9, heat * _anchorSeverity));
        if (accepted)
        {
            _anchor.Take(_state);
            _anchorSeverity = severity;
        }
        _step = Math.Max(_step * _tuning.ShorteningDecay, _tuning.LastShortening);
    }

    private void Disturb()
    {
        _state.Take(_anchor);
        double length = Math.Max(_state.Length, Best.Length * (1 - _step));
        _state.Length = length;
        if (_problem.Grid is not null && _random.Below(4) == 0)
            MovePrint(_problem.Grid);
        else if (_problem.GroupCount > 1 && _random.Below(8) == 0)
            TurnGroup(_random.Below(_problem.GroupCount));
        else
            SwapTwo();
        Refresh();
    }

    /// <summary>Swaps the places of two items of the larger half.</summary>
    private void SwapTwo()
    {
        int first = LargeItem();
        int second = LargeItem();
        if (first == second)
            return;
        (_state.X[first], _state.X[second]) = (_state.X[second], _state.X[first]);
        (_state.Y[first], _state.Y[second]) = (_state.Y[second], _state.Y[first]);
        KeepInside(first);
        KeepInside(second);
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

    /// <summary>The larger of two random items.</summary>
    private int LargeItem()
    {
        int first = _random.Below(_problem.PieceCount);
        int second = _random.Below(_problem.PieceCount);
        return _problem.Items[first].AreaSquareMicrometers >= _problem.Items[second].AreaSquareMicrometers ? first : second;
    }

    private void Keep()
    {
        LayEnds.Tighten(_problem, _state);
        // A tied piece may find no place within the shorter lay, and then nothing overlaps and nothing is won: counted, or a search by steps would not end.
        if (_problem.Grid is not null)
            _allowance.Step();
        if (_state.Length >= Best.Length)
            return;
        Best.Take(_state);
        _headings.CopyTo(_bestHeadings.AsSpan());
        Improved(Best);
    }
}
