namespace Nestmark.Nesting.Search;

/// <summary>Finds a better place for one item among all others: samples over the lay and near the item, then the best few refined.</summary>
/// <remarks>The scheme of samples and coordinate descent follows J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, sections 7 and 8; the numbers are our own.</remarks>
internal sealed class PiecePlacer
{
    private readonly SearchProblem _problem;
    private readonly SearchTuning _tuning;
    private readonly RandomStream _random;
    private readonly Overlaps[] _overlaps;
    private readonly Spot[] _best;
    private readonly List<double> _places = [];
    private int _bestCount;

    public PiecePlacer(SearchProblem problem, SearchTuning tuning, RandomStream random)
    {
        _problem = problem;
        _tuning = tuning;
        _random = random;
        _overlaps = [.. Enumerable.Range(0, Math.Min(tuning.WaysAtOnce, problem.Items.Max(item => item.Ways.Length))).Select(_ => new Overlaps(problem))];
        _best = new Spot[tuning.Refined];
    }

    /// <summary>Moves an item to the best place found, perhaps where it is, and brings its severities up to date.</summary>
    public void Place(LayState state, ReadOnlySpan<float> weights, ReadOnlySpan<int> headings, int item)
    {
        int ways = PrepareWays(state, weights, headings, item);
        _bestCount = 0;
        float current = _overlaps[0].Value(state.X[item], state.Y[item], float.MaxValue);
        Offer(new Spot(current, state.X[item], state.Y[item], 0), item);
        for (int i = 0; i < _tuning.WideSamples; i++)
            SampleWide(state, item, _random.Below(ways));
        for (int i = 0; i < _tuning.NearSamples; i++)
            SampleNear(state, item, i % 2 == 0 ? _tuning.NearSpread : _tuning.NearSpread / 5);
        Spot best = _best[0];
        for (int i = 0; i < _bestCount && best.Value > 0; i++)
        {
            Spot refined = Refine(state, item, SearchLines(state, item, _best[i]));
            if (refined.Value < best.Value)
                best = refined;
        }
        (state.X[item], state.Y[item], state.Way[item]) = (best.X, best.Y, _overlaps[best.Way].Way);
        _overlaps[best.Way].WriteSeverities(state, best.X, best.Y);
    }

    /// <summary>Gets the current way ready as number 0 and some of the other allowed ones after it; returns how many.</summary>
    private int PrepareWays(LayState state, ReadOnlySpan<float> weights, ReadOnlySpan<int> headings, int item)
    {
        SearchItem found = _problem.Items[item];
        _overlaps[0].Prepare(state, weights, item, state.Way[item]);
        int ways = 1;
        int first = _random.Below(found.Ways.Length);
        for (int i = 0; i < found.Ways.Length && ways < _overlaps.Length; i++)
        {
            int way = (first + i) % found.Ways.Length;
            bool allowed = way != state.Way[item]
                && (found.Group < 0 || found.Ways[way].Heading == headings[found.Group])
                && _problem.HighX(item, way, state.Length) >= _problem.LowX(item, way);
            if (allowed)
                _overlaps[ways++].Prepare(state, weights, item, way);
        }
        return ways;
    }

    private void SampleWide(LayState state, int item, int slot)
    {
        int way = _overlaps[slot].Way;
        double x = _random.Between(_problem.LowX(item, way), _problem.HighX(item, way, state.Length));
        double y = _random.Between(_problem.LowY(item, way), _problem.HighY(item, way));
        Judge(x, y, slot, item);
    }

    private void SampleNear(LayState state, int item, double spread)
    {
        double reach = spread * _problem.SizeOf(_problem.Items[item].Ways[state.Way[item]].Shape);
        (double x, double y) = Clamped(state, item, 0, state.X[item] + reach * _random.Bell(), state.Y[item] + reach * _random.Bell());
        Judge(x, y, 0, item);
    }

    private void Judge(double x, double y, int slot, int item)
    {
        float limit = _bestCount < _best.Length ? float.MaxValue : _best[_bestCount - 1].Value;
        float value = _overlaps[slot].Value(x, y, limit);
        if (value < limit)
            Offer(new Spot(value, x, y, slot), item);
    }

    /// <summary>Keeps the spot if it is among the best, each some way from the others.</summary>
    private void Offer(Spot spot, int item)
    {
        double near = 0.02 * _problem.SizeOf(_problem.Items[item].Ways[_overlaps[spot.Way].Way].Shape);
        for (int i = 0; i < _bestCount; i++)
        {
            if (_best[i].Way != spot.Way || Math.Abs(_best[i].X - spot.X) > near || Math.Abs(_best[i].Y - spot.Y) > near)
                continue;
            if (_best[i].Value <= spot.Value)
                return;
            _best.AsSpan(i + 1, _bestCount - i - 1).CopyTo(_best.AsSpan(i));
            _bestCount--;
            break;
        }
        int at = _bestCount;
        while (at > 0 && _best[at - 1].Value > spot.Value)
            at--;
        if (at == _best.Length)
            return;
        int moved = Math.Min(_bestCount, _best.Length - 1) - at;
        _best.AsSpan(at, moved).CopyTo(_best.AsSpan(at + 1));
        _best[at] = spot;
        _bestCount = Math.Min(_bestCount + 1, _best.Length);
    }

    /// <summary>Goes by turns to the best place on the horizontal and on the upright line through the spot, until neither helps.</summary>
    private Spot SearchLines(LayState state, int item, Spot spot)
    {
        Overlaps overlaps = _overlaps[spot.Way];
        int way = overlaps.Way;
        double reach = _tuning.LineReach * _problem.SizeOf(_problem.Items[item].Ways[way].Shape);
        (double lowX, double highX) = (_problem.LowX(item, way), _problem.HighX(item, way, state.Length));
        (double lowY, double highY) = (_problem.LowY(item, way), _problem.HighY(item, way));
        int failed = 0;
        for (int i = 0; i < _tuning.LineSearches && failed < 2 && spot.Value > 0; i++)
        {
            float before = spot.Value;
            spot = i % 2 == 0
                ? BestAlong(overlaps, spot, Math.Max(lowX, spot.X - reach), Math.Min(highX, spot.X + reach))
                : BestAcross(overlaps, spot, Math.Max(lowY, spot.Y - reach), Math.Min(highY, spot.Y + reach));
            failed = spot.Value < before ? 0 : failed + 1;
        }
        return spot;
    }

    private Spot BestAlong(Overlaps overlaps, Spot spot, double low, double high)
    {
        _places.Clear();
        overlaps.AddPlacesAlong(spot.Y, low, high, _places);
        Spot best = spot;
        foreach (double x in _places)
        {
            float value = overlaps.Value(x, spot.Y, best.Value);
            if (value < best.Value)
                best = spot with { X = x, Value = value };
        }
        return best;
    }

    private Spot BestAcross(Overlaps overlaps, Spot spot, double low, double high)
    {
        _places.Clear();
        overlaps.AddPlacesAcross(spot.X, low, high, _places);
        Spot best = spot;
        foreach (double y in _places)
        {
            float value = overlaps.Value(spot.X, y, best.Value);
            if (value < best.Value)
                best = spot with { Y = y, Value = value };
        }
        return best;
    }

    /// <summary>Coordinate descent: a step along x, y or both, longer after success, halved after failure.</summary>
    private Spot Refine(LayState state, int item, Spot spot)
    {
        Overlaps overlaps = _overlaps[spot.Way];
        double step = _tuning.FirstStep * _problem.SizeOf(_problem.Items[item].Ways[overlaps.Way].Shape);
        double last = _tuning.LastStepMicrometers;
        int kind = 0;
        while (step > last && spot.Value > 0)
        {
            kind = DirectionFor(item, overlaps.Way);
            (double alongX, double alongY) = kind switch
            {
                0 => (step, 0.0),
                1 => (0.0, step),
                2 => (step * 0.7071, step * 0.7071),
                _ => (step * 0.7071, -step * 0.7071),
            };
            Spot forward = At(state, item, spot, alongX, alongY);
            Spot backward = forward.Value < spot.Value ? forward : At(state, item, spot, -alongX, -alongY);
            Spot better = forward.Value < backward.Value ? forward : backward;
            if (better.Value < spot.Value)
            {
                spot = better;
                step *= 1.1;
            }
            else
            {
                step *= 0.5;
            }
        }
        return spot;
    }

    /// <summary>Along, across or one of two slants; only along or across where the other place is fixed by a fold.</summary>
    private int DirectionFor(int item, int way)
    {
        Seat seat = _problem.Items[item].Ways[way].Seat;
        return seat.LowY == seat.HighY ? 0 : seat.X is not null ? 1 : _random.Below(4);
    }

    private Spot At(LayState state, int item, Spot spot, double alongX, double alongY)
    {
        (double x, double y) = Clamped(state, item, spot.Way, spot.X + alongX, spot.Y + alongY);
        return new Spot(_overlaps[spot.Way].Value(x, y, spot.Value), x, y, spot.Way);
    }

    private (double X, double Y) Clamped(LayState state, int item, int slot, double x, double y)
    {
        int way = _overlaps[slot].Way;
        return (
            Math.Clamp(x, _problem.LowX(item, way), Math.Max(_problem.LowX(item, way), _problem.HighX(item, way, state.Length))),
            Math.Clamp(y, _problem.LowY(item, way), _problem.HighY(item, way)));
    }

    private readonly record struct Spot(float Value, double X, double Y, int Way);
}
