using Nestmark.Geometry;


namespace Nestmark.Nesting.Search;

/// <summary>Collects the outlines of a task, each distinct one once.</summary>
internal sealed class ShapeTable(LayTask task, Length tolerance)
{
    private readonly List<SearchShape> _shapes = [];
    private readonly List<(Polygon CuttingLine, Turn Turn, int Shape, Box Room)> _known = [];

    /// <summary>Whether any outline has lost corners.</summary>
    public bool IsSimplified { get; private set; }

    /// <summary>The way a demand lies in one of its turns.</summary>
    public SearchWay WayOf(Demand demand, Turn turn)
    {
        Polygon cuttingLine = demand.Piece.CuttingLine;
        foreach ((Polygon known, Turn knownTurn, int shape, Box room) in _known)
        {
            if (ReferenceEquals(known, cuttingLine) && knownTurn == turn)
                return new SearchWay(turn, shape, NapHeading.Of(turn), room);
        }
        Polygon turned = turn.Apply(cuttingLine);
        int index = IndexOf(ReachOf(turned));
        _known.Add((cuttingLine, turn, index, turned.Bounds));
        return new SearchWay(turn, index, NapHeading.Of(turn), turned.Bounds);
    }

    public SearchShape[] ToArray() => [.. _shapes];

    private Polygon ReachOf(Polygon turned)
    {
        Polygon simplified = tolerance > Length.Zero ? OutwardSimplification.Of(turned, tolerance) : turned;
        IsSimplified |= simplified.Outer.Length < turned.Outer.Length;
        return task.Gap > Length.Zero ? Offset.Grow(simplified, HalfOf(task.Gap)) : simplified;
    }

    private static Length HalfOf(Length gap) => Length.FromMicrometers((gap.Micrometers + 1) / 2);

    private int IndexOf(Polygon reach)
    {
        int index = _shapes.FindIndex(shape => shape.Reach.Outer.SequenceEqual(reach.Outer));
        if (index >= 0)
            return index;
        _shapes.Add(new SearchShape(reach, Math.Sqrt((double)ConvexHull.Of(reach.Outer).TwiceArea / 2)));
        return _shapes.Count - 1;
    }
}
