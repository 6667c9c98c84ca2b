using System.Runtime.Intrinsics;

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
    private readonly int _count;
    private readonly int _pieces;
    private readonly float[] _weights;
    private readonly int[] _colliding;
    private readonly LayState _best;

    public OverlapRemoval(SearchProblem problem, SearchTuning tuning, RandomStream random, Allowance allowance)
    {
        _tuning = tuning;
        _random = random;
        _allowance = allowance;
        _placer = new PiecePlacer(problem, tuning, random);
        _count = problem.Items.Length;
        _pieces = problem.PieceCount;
        _weights = new float[LayState.PaddedSquare(_count)];
        _colliding = new int[_count];
        _best = new LayState(_count, problem.PhaseCount);
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
        Array.Fill(_weights, 1f);
        _best.Take(state);
        double best = state.TotalSeverity();
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
            double total = state.TotalSeverity();
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
        int colliding = 0;
        for (int item = 0; item < _pieces; item++)
        {
            if (state.Overlaps(item))
                _colliding[colliding++] = item;
        }
        _random.Shuffle(_colliding.AsSpan(0, colliding));
        for (int i = 0; i < colliding && !_allowance.IsSpent; i++)
        {
            if (!state.Overlaps(_colliding[i]))
                continue;
            _placer.Place(state, _weights, headings, _colliding[i]);
            _allowance.Step();
        }
    }

    private void UpdateWeights(LayState state)
    {
        float most = state.GreatestSeverity();
        if (most == 0)
            return;
        Vector256<float> low = Vector256.Create((float)_tuning.WeightGrowthLow);
        Vector256<float> range = Vector256.Create((float)(_tuning.WeightGrowthHigh - _tuning.WeightGrowthLow) / most);
        Vector256<float> decay = Vector256.Create((float)_tuning.WeightDecay);
        ref float severities = ref state.Severity[0];
        ref float weights = ref _weights[0];
        for (nuint i = 0; i < (nuint)_weights.Length; i += 8)
        {
            Vector256<float> severity = Vector256.LoadUnsafe(ref severities, i);
            Vector256<float> weight = Vector256.LoadUnsafe(ref weights, i);
            Vector256<float> grown = weight * (low + range * severity);
            Vector256<float> decayed = Vector256.Max(Vector256<float>.One, weight * decay);
            Vector256.ConditionalSelect(Vector256.GreaterThan(severity, Vector256<float>.Zero), grown, decayed).StoreUnsafe(ref weights, i);
        }
    }
}
