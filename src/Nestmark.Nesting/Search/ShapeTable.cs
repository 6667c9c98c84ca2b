using Nestmark.Geometry;
using Nestmark.Nesting.Matching;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Collects the outlines of a task, each distinct one once.</summary>
/// <param name="task">The task.</param>
/// <param name="simpler">Gives an outline that covers the one it is given, with fewer corners or the same.</param>
internal sealed class ShapeTable(LayTask task, Func<Polygon, Polygon> simpler)
{
    private readonly List<SearchShape> _shapes = [];
    private readonly List<KnownTurn> _known = [];

    /// <summary>Whether any outline has lost corners.</summary>
    public bool IsSimplified { get; private set; }

    /// <summary>The ways a demand lies in one of its turns; none where it fits no band and no fold.</summary>
    public IEnumerable<SearchWay> WaysOf(Demand demand, Turn turn)
    {
        KnownTurn known = Known(demand, turn);
        return HeldSeats.Of(task, demand, turn)
            .Select(seat => new SearchWay(turn, known.Shape, known.Sensitive, NapHeading.Of(turn), known.Room, seat));
    }

    /// <summary>The way of an obstacle: where it is.</summary>
    /// <param name="area">In micrometers of the lay.</param>
    /// <param name="sizeMicrometers">How heavily an overlap with it counts, as a size of shape.</param>
    public SearchWay WayOf(Polygon area, double sizeMicrometers)
    {
        _shapes.Add(new SearchShape(area, sizeMicrometers));
        int shape = _shapes.Count - 1;
        return new SearchWay(Turn.None, shape, shape, 0, area.Bounds, default);
    }

    public SearchShape[] ToArray() => [.. _shapes];

    /// <summary>Mean size of the shapes so far.</summary>
    public double MeanSizeMicrometers() => SearchShape.MeanSizeMicrometers(_shapes);

    /// <summary>Outlines are simplified and grown in one pose for all mirror images, so that they stay mirror images.</summary>
    private KnownTurn Known(Demand demand, Turn turn)
    {
        Polygon cuttingLine = demand.Piece.CuttingLine;
        Polygon? sensitive = demand.Flaws.Sensitive;
        foreach (KnownTurn known in _known)
        {
            if (ReferenceEquals(known.CuttingLine, cuttingLine) && ReferenceEquals(known.SensitivePart, sensitive) && known.Turn == turn)
                return known;
        }
        Polygon turned = turn.Apply(cuttingLine);
        Mirroring mirroring = Mirroring.Of(turn);
        Polygon posed = Simplified(mirroring.Apply(turned));
        int shape = IndexOf(mirroring.Apply(task.Gap > Length.Zero ? Grown(posed) : posed));
        int keptClean = task.Obstacles.IsEmpty ? shape : IndexOf(sensitive is null ? mirroring.Apply(posed) : Simplified(turn.Apply(sensitive)));
        KnownTurn made = new(cuttingLine, sensitive, turn, shape, keptClean, turned.Bounds);
        _known.Add(made);
        return made;
    }

    private Polygon Simplified(Polygon turned)
    {
        Polygon simplified = simpler(turned);
        IsSimplified |= simplified.Outer.Length < turned.Outer.Length;
        return simplified;
    }

    /// <summary>Growing cuts corners in two, so where outlines may be simpler they are simplified once more.</summary>
    private Polygon Grown(Polygon posed) => simpler(Offset.Grow(posed, HalfOf(task.Gap)));

    private static Length HalfOf(Length gap) => Length.FromMicrometers((gap.Micrometers + 1) / 2);

    private int IndexOf(Polygon reach)
    {
        int index = _shapes.FindIndex(shape => shape.Reach.Outer.SequenceEqual(reach.Outer));
        if (index >= 0)
            return index;
        _shapes.Add(new SearchShape(reach, SizeOf(reach)));
        return _shapes.Count - 1;
    }

    /// <summary>Square root of the area of a shape's hull.</summary>
    public static double SizeOf(Polygon shape) => Math.Sqrt((double)ConvexHull.Of(shape.Outer).TwiceArea / 2);

    private sealed record KnownTurn(Polygon CuttingLine, Polygon? SensitivePart, Turn Turn, int Shape, int Sensitive, Box Room);
}
