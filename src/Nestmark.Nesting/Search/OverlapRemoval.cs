namespace Nestmark.Nesting.Search;

/// <summary>Removes all overlaps from a lay of fixed length, or comes as near as it can.</summary>
/// <remarks>
/// Guided by learned weights: pairs that stay overlapping grow heavier until they part. Weights and attempts follow
/// J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, section 8; the idea of guiding by penalties is C. Voudouris, E. Tsang (1999), Guided local search.
/// </remarks>
internal sealed class OverlapRemoval
{
    private readonly SearchTuning _tuning;
    private readonly RandomStream _random;
    private readonly PiecePlacer _placer;
    private readonly Allowance _allowance;
    private readonly int _pieces;
    private readonly PairTable _weights;
    private readonly int[] _colliding;
    private readonly LayState _best;

    public OverlapRemoval(SearchProblem problem, SearchTuning tuning, RandomStream random, Allowance allowance)
    {
        _tuning = tuning;
        _random = random;
        _allowance = allowance;
        _pieces = problem.PieceCount;
        _weights = new PairTable(problem.Items.Length, 1);
        _placer = new PiecePlacer(problem, tuning, random, _weights);
        _colliding = new int[_pieces];
        _best = new LayState(problem.Items.Length, problem.PhaseCount);
    }

    /// <summary>Whether ways that lean from the grain are tried too.</summary>
    public bool LeavesGrain
    {
        get => _placer.LeavesGrain;
        set => _placer.LeavesGrain = value;
    }

    /// <summary>Places judged so far.</summary>
    public long JudgedPlaces => _placer.JudgedPlaces;

    /// <summary>Runs attempts until no overlap is left, or too many in a row bring nothing.</summary>
    /// <param name="state">Start, and the best reached at the end; its severities must be up to date.</param>
    /// <param name="headings">Heading of each nap group.</param>
    /// <param name="attempts">Attempts without a better best that end the call.</param>
    /// <param name="patience">Rounds without a better best that end an attempt.</param>
    /// <returns>Whether no overlap is left.</returns>
    public bool Run(LayState state, ReadOnlySpan<int> headings, int attempts, int patience)
    {
        _weights.Settle();
        _best.Take(state);
        double best = state.Severities.Total();
        int failed = 0;
        while (best > 0 && failed < attempts && !_allowance.IsSpent)
        {
            double before = best;
            best = Attempt(state, headings, patience, best);
            failed = best < 0.98 * before ? 0 : failed + 1;
            if (best > 0)
                state.Take(_best);
        }
        state.Take(_best);
        return best == 0;
    }

    private double Attempt(LayState state, ReadOnlySpan<int> headings, int patience, double best)
    {
        for (int stale = 0; stale < patience && !_allowance.IsSpent; stale++)
        {
            MoveColliding(state, headings);
            double total = state.Severities.Total();
            if (total < best)
            {
                if (total < 0.98 * best)
                    stale = -1;
                best = total;
                _best.Take(state);
            }
            if (total == 0)
                return 0;
            UpdateWeights(state);
        }
        return best;
    }

    private void MoveColliding(LayState state, ReadOnlySpan<int> headings)
    {
        _placer.Look(state);
        int colliding = 0;
        for (int item = 0; item < _pieces; item++)
        {
            if (state.Severities.IsStirred(item))
                _colliding[colliding++] = item;
        }
        _random.Shuffle(_colliding.AsSpan(0, colliding));
        for (int i = 0; i < colliding && !_allowance.IsSpent; i++)
        {
            if (!state.Severities.IsStirred(_colliding[i]))
                continue;
            _placer.Place(state, headings, _colliding[i]);
            _allowance.Step();
        }
    }

    private void UpdateWeights(LayState state)
    {
        PairTable severities = state.Severities;
        float most = severities.Greatest();
        float low = (float)_tuning.WeightGrowthLow;
        float range = (float)(_tuning.WeightGrowthHigh - _tuning.WeightGrowthLow) / most;
        float decay = (float)_tuning.WeightDecay;
        foreach (ItemPair pair in severities.StirredWith(_weights))
        {
            float severity = severities[pair.Item, pair.Other];
            float weight = _weights[pair.Item, pair.Other];
            _weights.Set(pair.Item, pair.Other, severity > 0 ? weight * (low + range * severity) : Math.Max(1, weight * decay));
        }
    }
}
