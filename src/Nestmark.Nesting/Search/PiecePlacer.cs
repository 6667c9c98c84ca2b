namespace Nestmark.Nesting.Search;

/// <summary>Finds a better place for one item among all others: samples near the item and where the lay is least crowded, then exact searches along lines from the best few.</summary>
/// <remarks>
/// The samples follow J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, sections 7 and 8; the numbers are our own.
/// Those near the item come first: they are good already, so that most of the others, which lie far apart in memory, are given up at the first overlap.
/// Where no-fit polygons are convex the least value lies where two of them cross; sliding along the edge just met finds such places.
/// </remarks>
internal sealed class PiecePlacer
{
    private const int MostRepeats = 40;

    private readonly SearchProblem _problem;
    private readonly SearchTuning _tuning;
    private readonly RandomStream _random;
    private readonly Surroundings _surroundings;
    private readonly Overlaps[] _overlaps;
    private readonly Spot[] _best;
    private readonly LineSearch _lines;
    private readonly Crowding? _crowding;
    private readonly Field[] _fields;
    private readonly PrintGrid? _grid;
    private int _bestCount;

    public PiecePlacer(SearchProblem problem, SearchTuning tuning, RandomStream random, PairTable weights)
    {
        _problem = problem;
        _grid = problem.Grid;
        _tuning = tuning;
        _random = random;
        _surroundings = new Surroundings(problem);
        _overlaps = [.. Enumerable.Range(0, Math.Min(tuning.WaysAtOnce, problem.Items.Max(item => item.Ways.Length))).Select(_ => new Overlaps(problem, _surroundings, weights))];
        _best = new Spot[tuning.Refined];
        _lines = new LineSearch(problem.Items.Length);
        _crowding = tuning.WideSamples > 0 ? new Crowding(problem) : null;
        _fields = new Field[_overlaps.Length];
    }

    /// <summary>Whether ways that lean from the grain are tried too.</summary>
    public bool LeavesGrain { get; set; }

    /// <summary>Places judged so far.</summary>
    public long JudgedPlaces => _lines.JudgedPlaces + _overlaps.Sum(overlaps => overlaps.JudgedPlaces);

    /// <summary>Takes over where everything lies, once before placings of one state.</summary>
    public void Look(LayState state)
    {
        _surroundings.Look(state);
        _crowding?.Look(state);
    }

    /// <summary>Moves an item to the best place found, perhaps where it is, and brings its severities up to date.</summary>
    /// <param name="state">The state last looked at, changed by placings only.</param>
    /// <param name="headings">Heading of each nap group.</param>
    /// <param name="item">The item.</param>
    public void Place(LayState state, ReadOnlySpan<int> headings, int item)
    {
        _surroundings.Hide(item);
        int ways = PrepareWays(state, headings, item);
        _bestCount = 0;
        float current = _overlaps[0].Value(state.X[item], state.Y[item], float.MaxValue);
        Offer(new Spot(current, state.X[item], state.Y[item], 0), item);
        for (int i = 0; i < _tuning.NearSamples; i++)
            SampleNear(state, item, i % 2 == 0 ? _tuning.NearSpread : _tuning.NearSpread / 5);
        if (_crowding is not null)
            SampleWide(state, item, ways, _crowding);
        Spot best = _best[0].Value == 0 ? _best[0] : Refined(state, item);
        (state.X[item], state.Y[item], state.Way[item]) = (best.X, best.Y, _overlaps[best.Way].Way);
        _overlaps[best.Way].WriteSeverities(state, best.X, best.Y);
        _surroundings.Put(item, state.Way[item], best.X, best.Y);
        _crowding?.Put(item, state.Way[item], best.X, best.Y);
    }

    /// <summary>The best of the spots after a few lines from each, and many from the most promising.</summary>
    private Spot Refined(LayState state, int item)
    {
        for (int i = 0; i < _bestCount; i++)
        {
            _best[i] = SearchLines(state, item, _best[i], _tuning.FirstLines);
            if (_best[i].Value == 0)
                return _best[i];
        }
        _best.AsSpan(0, _bestCount).Sort((first, second) => first.Value.CompareTo(second.Value));
        Spot best = _best[0];
        for (int i = 0; i < Math.Min(_bestCount, _tuning.Finalists); i++)
        {
            Spot refined = SearchLines(state, item, _best[i], _tuning.LineSearches);
            if (refined.Value < best.Value)
                best = refined;
        }
        return best;
    }

    /// <summary>Gets the current way ready as number 0 and some of the other allowed ones after it; returns how many.</summary>
    private int PrepareWays(LayState state, ReadOnlySpan<int> headings, int item)
    {
        SearchItem found = _problem.Items[item];
        _overlaps[0].Prepare(item, state.Way[item]);
        int ways = 1;
        int first = _random.Below(found.Ways.Length);
        for (int i = 0; i < found.Ways.Length && ways < _overlaps.Length; i++)
        {
            int way = (first + i) % found.Ways.Length;
            bool allowed = way != state.Way[item]
                && (LeavesGrain || !found.Ways[way].IsTilted)
                && (found.Group < 0 || found.Ways[way].Heading == headings[found.Group])
                && _problem.HighX(item, way, state.Length) >= _problem.LowX(item, way)
                && (_grid is null || _grid.HasPlace(state.Phases, item, way));
            if (allowed)
                _overlaps[ways++].Prepare(item, way);
        }
        return ways;
    }

    /// <summary>Judges the least crowded of some places, as often as wanted.</summary>
    private void SampleWide(LayState state, int item, int ways, Crowding crowding)
    {
        crowding.Lift(item);
        for (int slot = 0; slot < ways; slot++)
            _fields[slot] = FieldOf(state, item, _overlaps[slot].Way, crowding);
        for (int i = 0; i < _tuning.WideSamples; i++)
        {
            (float bestX, float bestY, int best, int least) = (0, 0, 0, int.MaxValue);
            for (int j = 0; j < _tuning.PlacesPerSample; j++)
            {
                int slot = _random.Below(ways);
                ref readonly Field field = ref _fields[slot];
                (float ratioX, float ratioY) = _random.CoarseRatios();
                (float x, float y) = (field.LowX + ratioX * field.Width, field.LowY + ratioY * field.Height);
                int crowd = crowding.At(field.Shape, x, y);
                if (crowd < least)
                    (bestX, bestY, best, least) = (x, y, slot, crowd);
            }
            (double atX, double atY) = Clamped(state, item, best, bestX / crowding.CellsPerMicrometer, bestY / crowding.CellsPerMicrometer);
            Judge(atX, atY, best, item);
        }
    }

    /// <summary>Where an item may lie in one of its ways, in cells.</summary>
    private Field FieldOf(LayState state, int item, int way, Crowding crowding)
    {
        double scale = crowding.CellsPerMicrometer;
        (double lowX, double lowY) = (_problem.LowX(item, way), _problem.LowY(item, way));
        double width = Math.Max(0, _problem.HighX(item, way, state.Length) - lowX);
        return new Field(
            crowding.ShapeOf(_problem.Items[item].Ways[way].Shape),
            (float)(lowX * scale), (float)(width * scale), (float)(lowY * scale), (float)((_problem.HighY(item, way) - lowY) * scale));
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
        float value = _overlaps[slot].ValueUnlessWorse(x, y, limit);
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

    /// <summary>Goes by turns to the best place on the horizontal and on the upright line through the spot, and along each edge met, until none helps.</summary>
    /// <param name="state">Where the others lie.</param>
    /// <param name="item">The item.</param>
    /// <param name="spot">Where to begin.</param>
    /// <param name="lines">Most lines to search.</param>
    private Spot SearchLines(LayState state, int item, Spot spot, int lines)
    {
        if (_grid is not null && (_grid.HoldsAlong(state.Phases, item) || _grid.HoldsAcross(item)))
            return SearchRepeats(state, item, spot, lines);
        int failed = 0;
        int axis = 0;
        (double X, double Y) edge = (0, 0);
        for (int i = 0; i < lines && failed < 2 && spot.Value > 0; i++)
        {
            bool slides = edge != (0, 0);
            (double alongX, double alongY) = slides ? edge : axis++ % 2 == 0 ? (1.0, 0.0) : (0.0, 1.0);
            SearchLine line = LineThrough(state, item, spot, alongX, alongY);
            LinePlace place = _lines.Best(_overlaps[spot.Way], line, spot.Value, out float value);
            edge = place.Other >= 0 ? _overlaps[spot.Way].DirectionOf(place.Other, place.Edge) : (0, 0);
            if (value < spot.Value)
            {
                spot = Moved(state, item, spot with { Value = value }, place.At * alongX, place.At * alongY);
                failed = 0;
            }
            else if (!slides)
            {
                failed++;
            }
        }
        return spot;
    }

    /// <summary>As <see cref="SearchLines"/> for an item that the print holds: whole repeats in the directions in which it is held, the line where it is free.</summary>
    private Spot SearchRepeats(LayState state, int item, Spot spot, int lines)
    {
        int failed = 0;
        for (int i = 0; i < lines && failed < 2 && spot.Value > 0; i++)
        {
            float before = spot.Value;
            (double alongX, double alongY) = i % 2 == 0 ? (1.0, 0.0) : (0.0, 1.0);
            bool isHeld = i % 2 == 0 ? _grid!.HoldsAlong(state.Phases, item) : _grid!.HoldsAcross(item);
            if (isHeld)
            {
                spot = BestRepeat(state, item, spot, alongX * (i % 2 == 0 ? _grid.RepeatAlong(item) : 0), alongY * (i % 2 == 1 ? _grid.RepeatAcross(item) : 0));
            }
            else
            {
                LinePlace place = _lines.Best(_overlaps[spot.Way], LineThrough(state, item, spot, alongX, alongY), spot.Value, out float value);
                if (value < spot.Value)
                    spot = Moved(state, item, spot with { Value = value }, place.At * alongX, place.At * alongY);
            }
            failed = spot.Value < before ? 0 : failed + 1;
        }
        return spot;
    }

    /// <summary>The best place some whole repeats away, both ways.</summary>
    private Spot BestRepeat(LayState state, int item, Spot spot, double repeatX, double repeatY)
    {
        Overlaps overlaps = _overlaps[spot.Way];
        double reach = _tuning.LineReach * _problem.SizeOf(_problem.Items[item].Ways[overlaps.Way].Shape);
        int most = (int)Math.Min(MostRepeats, Math.Ceiling(reach / (repeatX + repeatY)));
        Spot best = spot;
        for (int times = -most; times <= most; times++)
        {
            (double x, double y) = Clamped(state, item, spot.Way, spot.X + times * repeatX, spot.Y + times * repeatY);
            float value = overlaps.Value(x, y, best.Value);
            if (value < best.Value)
                best = spot with { X = x, Y = y, Value = value };
        }
        return best;
    }

    private Spot Moved(LayState state, int item, Spot spot, double byX, double byY)
    {
        (double x, double y) = Clamped(state, item, spot.Way, spot.X + byX, spot.Y + byY);
        return spot with { X = x, Y = y };
    }

    private SearchLine LineThrough(LayState state, int item, Spot spot, double alongX, double alongY)
    {
        int way = _overlaps[spot.Way].Way;
        double reach = _tuning.LineReach * _problem.SizeOf(_problem.Items[item].Ways[way].Shape);
        SearchLine line = new(spot.X, spot.Y, alongX, alongY, -reach, reach);
        return line
            .Within(spot.X, alongX, _problem.LowX(item, way), _problem.HighX(item, way, state.Length))
            .Within(spot.Y, alongY, _problem.LowY(item, way), _problem.HighY(item, way));
    }

    private (double X, double Y) Clamped(LayState state, int item, int slot, double x, double y)
    {
        int way = _overlaps[slot].Way;
        x = Math.Clamp(x, _problem.LowX(item, way), Math.Max(_problem.LowX(item, way), _problem.HighX(item, way, state.Length)));
        y = Math.Clamp(y, _problem.LowY(item, way), _problem.HighY(item, way));
        return OnGrid(state, item, way, x, y);
    }

    /// <summary>The nearest place that the print allows.</summary>
    private (double X, double Y) OnGrid(LayState state, int item, int way, double x, double y) =>
        _grid?.Nearest(state.Phases, item, way, x, y, _problem.LowX(item, way), _problem.HighX(item, way, state.Length)) ?? (x, y);

    private readonly record struct Field(CrowdShape Shape, float LowX, float Width, float LowY, float Height);

    private readonly record struct Spot(float Value, double X, double Y, int Way);
}
