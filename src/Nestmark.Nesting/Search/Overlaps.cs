using System.Numerics;
using System.Runtime.Intrinsics;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Judges places for one item in one way against all others of a state: which no-fit polygons a place lies in, and how deep.</summary>
/// <remarks>
/// The severity of an overlap is √(depth × size) × size, size being that of the two shapes on average: steep where the overlap is slight, so that
/// small overlaps are still worth removing, and larger for larger shapes, whose overlaps are the hardest to remove.
/// Depth is the distance to the boundary of the no-fit polygon, as in T. Imamichi, M. Yagiura, H. Nagamochi (2009).
/// </remarks>
internal sealed class Overlaps
{
    /// <summary>Single precision at 16 m along the lay; boxes are widened by it.</summary>
    private const double BoxMargin = 2;

    private readonly SearchProblem _problem;
    private readonly int _count;
    private readonly float[] _minX;
    private readonly float[] _maxX;
    private readonly float[] _minY;
    private readonly float[] _maxY;
    private readonly PairFit?[] _fits;
    private readonly double[] _otherX;
    private readonly double[] _otherY;
    private readonly double[] _sign;
    private readonly float[] _weights;
    private readonly float[] _scales;
    private readonly List<double> _crossings = [];
    private int _item;

    public Overlaps(SearchProblem problem)
    {
        _problem = problem;
        _count = problem.Items.Length;
        int padded = (_count + 7) & ~7;
        _minX = new float[padded];
        _maxX = new float[padded];
        _minY = new float[padded];
        _maxY = new float[padded];
        Array.Fill(_minX, float.PositiveInfinity);
        Array.Fill(_maxX, float.NegativeInfinity);
        _fits = new PairFit?[padded];
        _otherX = new double[padded];
        _otherY = new double[padded];
        _sign = new double[padded];
        _weights = new float[padded];
        _scales = new float[padded];
    }

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
        double size = _problem.SizeOf(_problem.Items[item].Ways[way].Shape);
        for (int other = 0; other < _count; other++)
        {
            if (other == item || state.Way[other] < 0 || !_problem.KeepApart(item, other))
            {
                _minX[other] = float.PositiveInfinity;
                continue;
            }
            int otherShape = _problem.Items[other].Ways[state.Way[other]].Shape;
            SetOther(other, state.X[other], state.Y[other], _problem.ShapeAgainst(item, way, other), otherShape);
            _scales[other] = (float)((size + _problem.SizeOf(otherShape)) / (2 * _problem.MeanSizeMicrometers));
            _weights[other] = weights.IsEmpty ? 1 : weights[item * _count + other];
        }
    }

    /// <summary>Weighted severity of all overlaps at a place; may stop early with any value above the limit.</summary>
    public float Value(double x, double y, float limit)
    {
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
    /// <remarks>Depth is concave between the crossings of convex no-fit polygons, so the least value on a line lies at one of these places or at its ends.</remarks>
    public void AddPlacesAlong(double y, double low, double high, List<double> places)
    {
        for (int other = 0; other < _count; other++)
        {
            if (y <= _minY[other] || y >= _maxY[other] || high < _minX[other] || low > _maxX[other])
                continue;
            _crossings.Clear();
            _fits[other]!.CrossHorizontal(_sign[other] * (y - _otherY[other]), _crossings);
            AddOutside(other, _otherX[other], low, high, places);
        }
    }

    /// <summary>As <see cref="AddPlacesAlong"/> for the upright line through x.</summary>
    public void AddPlacesAcross(double x, double low, double high, List<double> places)
    {
        for (int other = 0; other < _count; other++)
        {
            if (x <= _minX[other] || x >= _maxX[other] || high < _minY[other] || low > _maxY[other])
                continue;
            _crossings.Clear();
            _fits[other]!.CrossUpright(_sign[other] * (x - _otherX[other]), _crossings);
            AddOutside(other, _otherY[other], low, high, places);
        }
    }

    private void AddOutside(int other, double origin, double low, double high, List<double> places)
    {
        for (int i = 0; i < _crossings.Count; i++)
        {
            double outside = _crossings[i] + (i % 2 == 0 ? -1 : 1);
            double place = origin + _sign[other] * outside;
            if (place >= low && place <= high)
                places.Add(place);
        }
    }

    /// <summary>Lower and upper ends of the no-fit polygons of the others, just outside.</summary>
    public IEnumerable<double> UprightEnds(LayState state)
    {
        for (int other = 0; other < _count; other++)
        {
            if (_minX[other] == float.PositiveInfinity)
                continue;
            bool upright = _sign[other] > 0;
            yield return Math.Floor(state.Y[other] + (upright ? _fits[other]!.MinY : -_fits[other]!.MaxY)) - 1;
            yield return Math.Ceiling(state.Y[other] + (upright ? _fits[other]!.MaxY : -_fits[other]!.MinY)) + 1;
        }
    }

    private uint Near(Vector256<float> atX, Vector256<float> atY, int i)
    {
        Vector256<float> inside =
            Vector256.GreaterThan(atX, Vector256.LoadUnsafe(ref _minX[i])) & Vector256.LessThan(atX, Vector256.LoadUnsafe(ref _maxX[i]))
            & Vector256.GreaterThan(atY, Vector256.LoadUnsafe(ref _minY[i])) & Vector256.LessThan(atY, Vector256.LoadUnsafe(ref _maxY[i]));
        return inside.ExtractMostSignificantBits();
    }

    private float SeverityWith(int other, double x, double y)
    {
        double sign = _sign[other];
        float depth = _fits[other]!.Depth(sign * (x - _otherX[other]), sign * (y - _otherY[other]));
        return depth > 0 ? MathF.Sqrt(depth * _scales[other]) * _scales[other] : 0;
    }

    /// <summary>One no-fit polygon serves both orders of a pair: seen from the other side it is turned half round.</summary>
    private void SetOther(int other, double x, double y, int shape, int otherShape)
    {
        bool otherIsStill = otherShape <= shape;
        PairFit fit = otherIsStill ? _problem.FitOf(otherShape, shape) : _problem.FitOf(shape, otherShape);
        _fits[other] = fit;
        _otherX[other] = x;
        _otherY[other] = y;
        _sign[other] = otherIsStill ? 1 : -1;
        _minX[other] = (float)(x + (otherIsStill ? fit.MinX : -fit.MaxX) - BoxMargin);
        _maxX[other] = (float)(x + (otherIsStill ? fit.MaxX : -fit.MinX) + BoxMargin);
        _minY[other] = (float)(y + (otherIsStill ? fit.MinY : -fit.MaxY) - BoxMargin);
        _maxY[other] = (float)(y + (otherIsStill ? fit.MaxY : -fit.MinY) + BoxMargin);
    }
}
