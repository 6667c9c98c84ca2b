using Nestmark.Geometry;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Judges places for one item in one way against all others: which no-fit polygons a place lies in, and how severe that is.</summary>
/// <remarks>
/// The severity of an overlap is that of <see cref="OverlapMap"/> times the size of the two shapes: far above zero even where the overlap is slight, so that
/// small overlaps are still worth removing, and larger for larger shapes, whose overlaps are the hardest to remove.
/// Whether there is one at all the no-fit polygon says, within a micrometer.
/// </remarks>
/// <param name="problem">What is laid.</param>
/// <param name="surroundings">Where the others lie; must not change while places are judged.</param>
/// <param name="weights">Weight of each pair; may be of no items where no weighted severity is asked for.</param>
internal sealed class Overlaps(SearchProblem problem, Surroundings surroundings, PairTable weights)
{
    private readonly PairSides _sides = problem.Sides;
    private readonly LargestCircles _circles = problem.Circles;
    private readonly int[] _near = new int[problem.Items.Length];
    private LineCrossing[] _crossings = new LineCrossing[64];
    private int _item;
    private int _shape;
    private int _sensitive;
    private Box _bounds;

    /// <summary>Places judged so far, those on lines left out.</summary>
    public long JudgedPlaces { get; private set; }

    /// <summary>The way that places are judged for.</summary>
    public int Way { get; private set; }

    /// <summary>Gets ready to judge places of an item in one way. The item must not be among the surroundings.</summary>
    /// <param name="item">The item.</param>
    /// <param name="way">One of its ways.</param>
    public void Prepare(int item, int way)
    {
        SearchWay found = problem.Items[item].Ways[way];
        _item = item;
        Way = way;
        (_shape, _sensitive) = (found.Shape, found.Sensitive);
        _bounds = problem.BoundsOf(_shape).Including(problem.BoundsOf(_sensitive));
    }

    /// <summary>Weighted severity of all overlaps at a place; may stop early with any value above the limit.</summary>
    public float Value(double x, double y, float limit)
    {
        JudgedPlaces++;
        return Sum(NearAt(x, y), x, y, limit);
    }

    /// <summary>The same, and gives a place up sooner where the largest circles tell that it is worse than the limit.</summary>
    public float ValueUnlessWorse(double x, double y, float limit)
    {
        JudgedPlaces++;
        int near = NearAt(x, y);
        ReadOnlySpan<float> row = weights.Row(_item);
        float least = 0;
        for (int i = 0; i < near; i++)
        {
            int other = _near[i];
            least += row[other] * _circles.LeastSeverity(surroundings.ShapeOf(other), MovingAgainst(other), (float)(x - surroundings.XOf(other)), (float)(y - surroundings.YOf(other)));
            if (least > limit)
                return least;
        }
        return Sum(near, x, y, limit);
    }

    /// <summary>Whether nothing overlaps at a place.</summary>
    public bool IsFree(double x, double y)
    {
        int near = NearAt(x, y);
        for (int i = 0; i < near; i++)
        {
            if (FitOf(_near[i]).Contains(x - surroundings.XOf(_near[i]), y - surroundings.YOf(_near[i])))
                return false;
        }
        return true;
    }

    /// <summary>Writes the severity with every other item at a place into a state.</summary>
    public void WriteSeverities(LayState state, double x, double y)
    {
        state.Severities.Settle(_item);
        int near = NearAt(x, y);
        for (int i = 0; i < near; i++)
        {
            float severity = SeverityWith(_near[i], x, y);
            if (severity > 0)
                state.Severities.Set(_item, _near[i], severity);
        }
    }

    /// <summary>Adds the places on the horizontal line through y, between two bounds, that lie just outside the no-fit polygon of one of the others.</summary>
    public void AddPlacesAlong(double y, double low, double high, List<double> places)
    {
        SearchLine line = new(0, y, 1, 0, low, high);
        int near = Near(line, _near);
        for (int i = 0; i < near; i++)
        {
            double from = surroundings.XOf(_near[i]);
            ReadOnlySpan<LineCrossing> crossings = Cross(_near[i], line with { X = from });
            for (int j = 0; j < crossings.Length; j++)
            {
                double place = from + crossings[j].At + (j % 2 == 0 ? -1 : 1);
                if (place >= low && place <= high)
                    places.Add(place);
            }
        }
    }

    /// <summary>Writes down the others whose no-fit polygons have bounds that meet those of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="near">Room for all items.</param>
    /// <returns>How many there are.</returns>
    public int Near(in SearchLine line, int[] near)
    {
        (double fromX, double toX) = line.Extent(line.X, line.AlongX);
        (double fromY, double toY) = line.Extent(line.Y, line.AlongY);
        return Heeded(near, surroundings.Near(Swept(fromX, toX, fromY, toY), near));
    }

    /// <summary>Where a line crosses the no-fit polygon of another item: an even number of places, rising; good until the next call.</summary>
    public ReadOnlySpan<LineCrossing> Cross(int other, in SearchLine line)
    {
        SeenFit fit = FitOf(other);
        if (_crossings.Length < fit.Fit.EdgeCount)
            _crossings = new LineCrossing[fit.Fit.EdgeCount];
        int count = fit.Cross(line.X - surroundings.XOf(other), line.Y - surroundings.YOf(other), line.AlongX, line.AlongY, _crossings);
        return _crossings.AsSpan(0, count);
    }

    /// <summary>Direction of an edge of the no-fit polygon of another item, a unit vector; 0, 0 when it has no extent.</summary>
    public (double X, double Y) DirectionOf(int other, int edge) => FitOf(other).DirectionOf(edge);

    /// <summary>Weighted severity of the overlap with one other item at a place known to lie inside its no-fit polygon.</summary>
    public float ValueInside(int other, double x, double y) =>
        weights[_item, other] * SideOf(other).Inside(x - surroundings.XOf(other), y - surroundings.YOf(other));

    /// <summary>Lower and upper ends of the no-fit polygons of the others, just outside.</summary>
    public IEnumerable<double> UprightEnds()
    {
        for (int other = 0; other < problem.Items.Length; other++)
        {
            if (!surroundings.Holds(other) || !IsHeeded(other))
                continue;
            (double low, double high) = FitOf(other).Upright;
            yield return Math.Floor(surroundings.YOf(other) + low) - 1;
            yield return Math.Ceiling(surroundings.YOf(other) + high) + 1;
        }
    }

    private float Sum(int near, double x, double y, float limit)
    {
        ReadOnlySpan<float> row = weights.Row(_item);
        float sum = 0;
        for (int i = 0; i < near; i++)
        {
            sum += row[_near[i]] * SeverityWith(_near[i], x, y);
            if (sum > limit)
                return sum;
        }
        return sum;
    }

    private int NearAt(double x, double y) => Heeded(_near, surroundings.Near(Swept(x, x, y, y), _near));

    /// <summary>What the item covers while it moves from place to place.</summary>
    private Extent Swept(double fromX, double toX, double fromY, double toY) => new(
        (float)(fromX + _bounds.MinX - Surroundings.Margin), (float)(toX + _bounds.MaxX + Surroundings.Margin),
        (float)(fromY + _bounds.MinY - Surroundings.Margin), (float)(toY + _bounds.MaxY + Surroundings.Margin));

    /// <summary>Strikes out obstacles that the item need not keep off.</summary>
    private int Heeded(int[] near, int count)
    {
        if (problem.PieceCount == problem.Items.Length)
            return count;
        int kept = 0;
        for (int i = 0; i < count; i++)
        {
            if (IsHeeded(near[i]))
                near[kept++] = near[i];
        }
        return kept;
    }

    private bool IsHeeded(int other) => other < problem.PieceCount || problem.KeepApart(_item, other);

    private float SeverityWith(int other, double x, double y) => SideOf(other).At(x - surroundings.XOf(other), y - surroundings.YOf(other));

    private ref readonly PairSide SideOf(int other) => ref _sides.Of(surroundings.ShapeOf(other), MovingAgainst(other));

    private SeenFit FitOf(int other) => _sides.FitOf(surroundings.ShapeOf(other), MovingAgainst(other));

    /// <summary>What counts against an obstacle is what must stay clean; else what others keep off.</summary>
    private int MovingAgainst(int other) => other < problem.PieceCount ? _shape : _sensitive;
}
