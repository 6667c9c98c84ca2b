using System.Numerics;
using System.Runtime.Intrinsics;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Judges places for one item in one way against all others of a state: which no-fit polygons a place lies in, and how severe that is.</summary>
/// <remarks>
/// The severity of an overlap is that of <see cref="OverlapMap"/> times the size of the two shapes: far above zero even where the overlap is slight, so that
/// small overlaps are still worth removing, and larger for larger shapes, whose overlaps are the hardest to remove.
/// Whether there is one at all the no-fit polygon says, within a micrometer.
/// </remarks>
internal sealed class Overlaps
{
    private readonly SearchProblem _problem;
    private readonly int _count;
    private readonly int[] _firstWays;
    private readonly int[] _shapes;
    private readonly float[] _minX;
    private readonly float[] _maxX;
    private readonly float[] _minY;
    private readonly float[] _maxY;
    private readonly PairSides _sides;
    private readonly int[] _still;
    private readonly int[] _moving;
    private readonly double[] _otherX;
    private readonly double[] _otherY;
    private readonly float[] _weights;
    private LineCrossing[] _crossings = new LineCrossing[64];
    private int _item;

    public Overlaps(SearchProblem problem)
    {
        _problem = problem;
        _count = problem.Items.Length;
        _firstWays = new int[_count];
        for (int item = 1; item < _count; item++)
            _firstWays[item] = _firstWays[item - 1] + problem.Items[item - 1].Ways.Length;
        _shapes = [.. problem.Items.SelectMany(item => item.Ways.Select(way => way.Shape))];
        int padded = (_count + 7) & ~7;
        _minX = new float[padded];
        _maxX = new float[padded];
        _minY = new float[padded];
        _maxY = new float[padded];
        Array.Fill(_minX, float.PositiveInfinity);
        Array.Fill(_maxX, float.NegativeInfinity);
        _sides = problem.Sides;
        _still = new int[padded];
        _moving = new int[padded];
        _otherX = new double[padded];
        _otherY = new double[padded];
        _weights = new float[padded];
    }

    /// <summary>Places judged so far, those on lines left out.</summary>
    public long JudgedPlaces { get; private set; }

    /// <summary>The way that places are judged for.</summary>
    public int Way { get; private set; }

    /// <summary>Gets ready to judge places of an item in one way; items that are not placed (way -1) do not count.</summary>
    /// <param name="state">Where the others lie; must not change while places are judged.</param>
    /// <param name="weights">Weight of each pair, row times count plus column; empty for all equal.</param>
    /// <param name="item">The item.</param>
    /// <param name="way">One of its ways.</param>
    public void Prepare(LayState state, ReadOnlySpan<float> weights, int item, int way)
    {
        _item = item;
        Way = way;
        state.X.CopyTo(_otherX, 0);
        state.Y.CopyTo(_otherY, 0);
        if (weights.IsEmpty)
            Array.Fill(_weights, 1f);
        else
            weights.Slice(item * _count, _count).CopyTo(_weights);
        int shape = _shapes[_firstWays[item] + way];
        int[] ways = state.Way;
        for (int other = 0; other < _problem.PieceCount; other++)
        {
            if (ways[other] >= 0)
                SetOther(other, _shapes[_firstWays[other] + ways[other]], shape);
            else
                _minX[other] = float.PositiveInfinity;
        }
        for (int other = _problem.PieceCount; other < _count; other++)
            SetObstacle(other, item, way);
        _minX[item] = float.PositiveInfinity;
    }

    private void SetObstacle(int other, int item, int way)
    {
        if (_problem.KeepApart(item, other))
            SetOther(other, _shapes[_firstWays[other]], _problem.ShapeAgainst(item, way, other));
        else
            _minX[other] = float.PositiveInfinity;
    }

    /// <summary>Asks the two shapes for their bounds and not the pair, which lies somewhere in memory and is needed only where they are near.</summary>
    private void SetOther(int other, int still, int moving)
    {
        _still[other] = still;
        _moving[other] = moving;
        FitRoom room = _sides.RoomOf(still, moving);
        double x = _otherX[other];
        double y = _otherY[other];
        _minX[other] = (float)(x + room.MinX);
        _maxX[other] = (float)(x + room.MaxX);
        _minY[other] = (float)(y + room.MinY);
        _maxY[other] = (float)(y + room.MaxY);
    }

    /// <summary>Weighted severity of all overlaps at a place; may stop early with any value above the limit.</summary>
    public float Value(double x, double y, float limit)
    {
        JudgedPlaces++;
        float sum = 0;
        Vector256<float> atX = Vector256.Create((float)x);
        Vector256<float> atY = Vector256.Create((float)y);
        for (int i = 0; i < _count; i += 8)
        {
            uint near = Near(atX, atY, i);
            for (; near != 0; near &= near - 1)
            {
                int other = i + BitOperations.TrailingZeroCount(near);
                sum += _weights[other] * SeverityWith(other, x, y);
                if (sum > limit)
                    return sum;
            }
        }
        return sum;
    }

    /// <summary>Whether nothing overlaps at a place.</summary>
    public bool IsFree(double x, double y)
    {
        Vector256<float> atX = Vector256.Create((float)x);
        Vector256<float> atY = Vector256.Create((float)y);
        for (int i = 0; i < _count; i += 8)
        {
            for (uint near = Near(atX, atY, i); near != 0; near &= near - 1)
            {
                int other = i + BitOperations.TrailingZeroCount(near);
                if (FitOf(other).Contains(x - _otherX[other], y - _otherY[other]))
                    return false;
            }
        }
        return true;
    }

    /// <summary>Writes the severity with every other item at a place into the item's row and column of a state.</summary>
    public void WriteSeverities(LayState state, double x, double y)
    {
        for (int other = 0; other < _count; other++)
        {
            float severity = 0;
            if (other != _item && x > _minX[other] && x < _maxX[other] && y > _minY[other] && y < _maxY[other])
                severity = SeverityWith(other, x, y);
            state.Severity[_item * _count + other] = severity;
            state.Severity[other * _count + _item] = severity;
        }
    }

    /// <summary>Adds the places on the horizontal line through y, between two bounds, that lie just outside the no-fit polygon of one of the others.</summary>
    public void AddPlacesAlong(double y, double low, double high, List<double> places)
    {
        for (int other = 0; other < _count; other++)
        {
            if (y <= _minY[other] || y >= _maxY[other] || high < _minX[other] || low > _maxX[other])
                continue;
            ReadOnlySpan<LineCrossing> crossings = Cross(other, new SearchLine(_otherX[other], y, 1, 0, low, high));
            for (int i = 0; i < crossings.Length; i++)
            {
                double place = _otherX[other] + crossings[i].At + (i % 2 == 0 ? -1 : 1);
                if (place >= low && place <= high)
                    places.Add(place);
            }
        }
    }

    /// <summary>Writes down the others whose no-fit polygons have bounds that meet those of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="near">Room for all items.</param>
    /// <returns>How many there are.</returns>
    public int Near(in SearchLine line, Span<int> near)
    {
        (double fromX, double toX) = line.Extent(line.X, line.AlongX);
        (double fromY, double toY) = line.Extent(line.Y, line.AlongY);
        Vector256<float> lowX = Vector256.Create((float)fromX);
        Vector256<float> highX = Vector256.Create((float)toX);
        Vector256<float> lowY = Vector256.Create((float)fromY);
        Vector256<float> highY = Vector256.Create((float)toY);
        int count = 0;
        for (int i = 0; i < _count; i += 8)
        {
            Vector256<float> meets =
                Vector256.LessThan(lowX, Vector256.LoadUnsafe(ref _maxX[i])) & Vector256.GreaterThan(highX, Vector256.LoadUnsafe(ref _minX[i]))
                & Vector256.LessThan(lowY, Vector256.LoadUnsafe(ref _maxY[i])) & Vector256.GreaterThan(highY, Vector256.LoadUnsafe(ref _minY[i]));
            for (uint left = meets.ExtractMostSignificantBits(); left != 0; left &= left - 1)
                near[count++] = i + BitOperations.TrailingZeroCount(left);
        }
        return count;
    }

    /// <summary>Where a line crosses the no-fit polygon of another item: an even number of places, rising; good until the next call.</summary>
    public ReadOnlySpan<LineCrossing> Cross(int other, in SearchLine line)
    {
        SeenFit fit = FitOf(other);
        if (_crossings.Length < fit.Fit.EdgeCount)
            _crossings = new LineCrossing[fit.Fit.EdgeCount];
        int count = fit.Cross(line.X - _otherX[other], line.Y - _otherY[other], line.AlongX, line.AlongY, _crossings);
        return _crossings.AsSpan(0, count);
    }

    /// <summary>Direction of an edge of the no-fit polygon of another item, a unit vector; 0, 0 when it has no extent.</summary>
    public (double X, double Y) DirectionOf(int other, int edge) => FitOf(other).DirectionOf(edge);

    /// <summary>Weighted severity of the overlap with one other item at a place known to lie inside its no-fit polygon.</summary>
    public float ValueInside(int other, double x, double y) =>
        _weights[other] * _sides.Of(_still[other], _moving[other]).Inside(x - _otherX[other], y - _otherY[other]);

    /// <summary>Lower and upper ends of the no-fit polygons of the others, just outside.</summary>
    public IEnumerable<double> UprightEnds(LayState state)
    {
        for (int other = 0; other < _count; other++)
        {
            if (_minX[other] == float.PositiveInfinity)
                continue;
            (double low, double high) = FitOf(other).Upright;
            yield return Math.Floor(state.Y[other] + low) - 1;
            yield return Math.Ceiling(state.Y[other] + high) + 1;
        }
    }

    private uint Near(Vector256<float> atX, Vector256<float> atY, int i)
    {
        Vector256<float> inside =
            Vector256.GreaterThan(atX, Vector256.LoadUnsafe(ref _minX[i])) & Vector256.LessThan(atX, Vector256.LoadUnsafe(ref _maxX[i]))
            & Vector256.GreaterThan(atY, Vector256.LoadUnsafe(ref _minY[i])) & Vector256.LessThan(atY, Vector256.LoadUnsafe(ref _maxY[i]));
        return inside.ExtractMostSignificantBits();
    }

    private float SeverityWith(int other, double x, double y) => _sides.Of(_still[other], _moving[other]).At(x - _otherX[other], y - _otherY[other]);

    private SeenFit FitOf(int other) => _sides.FitOf(_still[other], _moving[other]);
}
