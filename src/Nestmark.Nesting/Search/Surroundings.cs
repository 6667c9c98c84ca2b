using System.Numerics;
using System.Runtime.Intrinsics;
using Nestmark.Geometry;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Where the items of a state lie, so that those near a place are found eight at a time and without asking any pair.</summary>
internal sealed class Surroundings
{
    /// <summary>How far bounds are to be widened that are looked for here: what a no-fit polygon may stand out of them, and single precision at 30 m along the lay.</summary>
    public const double Margin = PairFit.OverhangMicrometers + 6;

    private readonly SearchProblem _problem;

    /// <summary>Bounds by lane: items side by side along the lay have lanes side by side, as far as they have not moved since they were last looked at.</summary>
    private readonly float[] _minX;
    private readonly float[] _maxX;
    private readonly float[] _minY;
    private readonly float[] _maxY;

    /// <summary>What eight lanes together reach over.</summary>
    private readonly float[] _blockMinX;
    private readonly float[] _blockMaxX;
    private readonly double[] _middles;
    private readonly int[] _itemOfLane;
    private readonly int[] _laneOfItem;
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly int[] _shapes;

    /// <summary>The obstacles and no piece.</summary>
    public Surroundings(SearchProblem problem)
    {
        _problem = problem;
        int count = problem.Items.Length;
        int blocks = (count + 7) / 8;
        _minX = new float[8 * blocks];
        _maxX = new float[8 * blocks];
        _minY = new float[8 * blocks];
        _maxY = new float[8 * blocks];
        _blockMinX = new float[(blocks + 7) & ~7];
        _blockMaxX = new float[(blocks + 7) & ~7];
        _middles = new double[count];
        _itemOfLane = [.. Enumerable.Range(0, count)];
        _laneOfItem = [.. Enumerable.Range(0, count)];
        _x = new double[count];
        _y = new double[count];
        _shapes = new int[count];
        Clear();
    }

    /// <summary>Leaves the obstacles only.</summary>
    public void Clear()
    {
        Empty();
        PutObstacles();
    }

    /// <summary>Takes over where everything lies; pieces that are not placed (way -1) are not there.</summary>
    public void Look(LayState state)
    {
        Empty();
        SortLanes(state);
        PutObstacles();
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            if (state.Way[item] >= 0)
                Put(item, state.Way[item], state.X[item], state.Y[item]);
        }
    }

    /// <summary>Puts an item somewhere, in one of its ways.</summary>
    public void Put(int item, int way, double x, double y)
    {
        int shape = _problem.Items[item].Ways[way].Shape;
        Box bounds = _problem.BoundsOf(shape);
        (_x[item], _y[item], _shapes[item]) = (x, y, shape);
        int lane = _laneOfItem[item];
        _minX[lane] = (float)(x + bounds.MinX);
        _maxX[lane] = (float)(x + bounds.MaxX);
        _minY[lane] = (float)(y + bounds.MinY);
        _maxY[lane] = (float)(y + bounds.MaxY);
        _blockMinX[lane / 8] = Math.Min(_blockMinX[lane / 8], _minX[lane]);
        _blockMaxX[lane / 8] = Math.Max(_blockMaxX[lane / 8], _maxX[lane]);
    }

    /// <summary>Takes an item away.</summary>
    public void Hide(int item) => _minX[_laneOfItem[item]] = float.PositiveInfinity;

    /// <summary>Whether an item is there.</summary>
    public bool Holds(int item) => _minX[_laneOfItem[item]] < float.PositiveInfinity;

    /// <summary>Where an item that is there lies along the lay.</summary>
    public double XOf(int item) => _x[item];

    /// <summary>Where it lies across.</summary>
    public double YOf(int item) => _y[item];

    /// <summary>Its shape.</summary>
    public int ShapeOf(int item) => _shapes[item];

    /// <summary>Writes down the items whose bounds meet an extent.</summary>
    /// <param name="extent">The extent, widened by <see cref="Margin"/>.</param>
    /// <param name="near">Room for all items.</param>
    /// <returns>How many there are.</returns>
    public int Near(in Extent extent, int[] near)
    {
        Vector256<float> minX = Vector256.Create(extent.MinX);
        Vector256<float> maxX = Vector256.Create(extent.MaxX);
        Vector256<float> minY = Vector256.Create(extent.MinY);
        Vector256<float> maxY = Vector256.Create(extent.MaxY);
        int count = 0;
        for (int i = 0; i < _blockMinX.Length; i += 8)
        {
            Vector256<float> reaches = Vector256.LessThan(minX, Vector256.LoadUnsafe(ref _blockMaxX[i])) & Vector256.GreaterThan(maxX, Vector256.LoadUnsafe(ref _blockMinX[i]));
            for (uint blocks = reaches.ExtractMostSignificantBits(); blocks != 0; blocks &= blocks - 1)
            {
                int first = 8 * (i + BitOperations.TrailingZeroCount(blocks));
                Vector256<float> meets =
                    Vector256.LessThan(minX, Vector256.LoadUnsafe(ref _maxX[first])) & Vector256.GreaterThan(maxX, Vector256.LoadUnsafe(ref _minX[first]))
                    & Vector256.LessThan(minY, Vector256.LoadUnsafe(ref _maxY[first])) & Vector256.GreaterThan(maxY, Vector256.LoadUnsafe(ref _minY[first]));
                for (uint lanes = meets.ExtractMostSignificantBits(); lanes != 0; lanes &= lanes - 1)
                    near[count++] = _itemOfLane[first + BitOperations.TrailingZeroCount(lanes)];
            }
        }
        return count;
    }

    private void Empty()
    {
        Array.Fill(_minX, float.PositiveInfinity);
        Array.Fill(_blockMinX, float.PositiveInfinity);
        Array.Fill(_blockMaxX, float.NegativeInfinity);
    }

    private void PutObstacles()
    {
        for (int obstacle = _problem.PieceCount; obstacle < _problem.Items.Length; obstacle++)
            Put(obstacle, 0, 0, 0);
    }

    /// <summary>Gives the pieces lanes in the order of their middles along the lay, which has changed little since the last time; the obstacles keep theirs.</summary>
    private void SortLanes(LayState state)
    {
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            Box room = _problem.Items[item].Ways[Math.Max(0, state.Way[item])].Room;
            _middles[item] = state.X[item] + (room.MinX + room.MaxX) / 2.0;
        }
        for (int lane = 1; lane < _problem.PieceCount; lane++)
        {
            int item = _itemOfLane[lane];
            int to = lane;
            for (; to > 0 && _middles[_itemOfLane[to - 1]] > _middles[item]; to--)
                _itemOfLane[to] = _itemOfLane[to - 1];
            _itemOfLane[to] = item;
        }
        for (int lane = 0; lane < _problem.PieceCount; lane++)
            _laneOfItem[_itemOfLane[lane]] = lane;
    }
}
