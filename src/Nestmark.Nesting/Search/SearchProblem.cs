using Nestmark.Geometry;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>A lay task turned into what the search works on; shared by all threads and not changed by them.</summary>
internal sealed class SearchProblem
{
    private readonly SearchShape[] _shapes;

    /// <summary>Whether any outline has fewer corners than the true one.</summary>
    public bool IsSimplified { get; private init; }

    private SearchProblem(SearchItem[] items, int pieces, SearchShape[] shapes, int groups, LayTask task)
    {
        Items = items;
        PieceCount = pieces;
        _shapes = shapes;
        MeanSizeMicrometers = SearchShape.MeanSizeMicrometers(shapes);
        PairFits fits = new([.. shapes.Select(shape => shape.Reach)]);
        Sides = new PairSides(shapes, fits);
        Circles = new LargestCircles(shapes, fits);
        GroupCount = groups;
        DepthMicrometers = task.Surface.Depth.Micrometers;
        GapMicrometers = task.Gap.Micrometers;
        AreaSquareMicrometers = items.Sum(item => item.AreaSquareMicrometers);
        ObstaclesEndMicrometers = task.Obstacles.IsEmpty ? 0 : task.Obstacles.Max(obstacle => obstacle.Area.Bounds.MaxX);
        Grid = PrintGrid.Of(task);
        IsAnchored = pieces < items.Length || items.Any(item => item.Ways.Any(way => way.Seat.X is not null));
    }

    /// <summary>Where the print lets tied pieces lie; <c>null</c> when it ties none.</summary>
    public PrintGrid? Grid { get; }

    /// <summary>How many phases a state of this problem has.</summary>
    public int PhaseCount => Grid?.Count ?? 0;

    /// <summary>The pieces, in the order of the demands, then the obstacles.</summary>
    public SearchItem[] Items { get; }

    /// <summary>How many of the items are pieces; those after them never move.</summary>
    public int PieceCount { get; }

    /// <summary>Whether x = 0 is a place on the cloth, so that the lay may not be moved along it.</summary>
    public bool IsAnchored { get; }

    /// <summary>Where the farthest obstacle ends along the lay; 0 without one.</summary>
    public double ObstaclesEndMicrometers { get; }

    public int GroupCount { get; }

    public double DepthMicrometers { get; }

    public double GapMicrometers { get; }

    /// <summary>The no-fit polygons of all pairs of shapes.</summary>
    public PairSides Sides { get; }

    /// <summary>Outlines that items have in one of their ways.</summary>
    public int ShapeCount => _shapes.Length;

    /// <summary>Mean size of the shapes.</summary>
    public double MeanSizeMicrometers { get; }

    /// <summary>The largest circles in all shapes.</summary>
    public LargestCircles Circles { get; }

    /// <summary>Sum over one layer of every item.</summary>
    public double AreaSquareMicrometers { get; }

    /// <summary>No lay can be shorter.</summary>
    public double LowerBoundMicrometers => Math.Max(
        AreaSquareMicrometers / DepthMicrometers,
        Items.Take(PieceCount).Max(item => item.Ways.Min(way => (double)way.Room.Width)));

    /// <summary>Reads the task.</summary>
    /// <param name="task">One demand or more, each fitting the lay in one of its turns.</param>
    /// <param name="tolerance">How far outlines may be simplified, always outward; zero keeps them as they are.</param>
    public static SearchProblem Of(LayTask task, Length tolerance) =>
        Of(task, turned => tolerance > Length.Zero ? OutwardSimplification.Of(turned, tolerance) : turned);

    /// <summary>Reads the task with every outline replaced by its bounds: quick to lay, whatever the outlines are.</summary>
    public static SearchProblem OfBounds(LayTask task) => Of(task, turned => BoundsOf(turned.Bounds));

    private static Polygon BoundsOf(Box box) =>
        Polygon.Of([new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Point(box.MaxX, box.MaxY), new Point(box.MinX, box.MaxY)]);

    private static SearchProblem Of(LayTask task, Func<Polygon, Polygon> simpler)
    {
        ShapeTable shapes = new(task, simpler);
        List<string> groups = [];
        List<SearchItem> items = [];
        foreach (Demand demand in task.Demands)
        {
            int group = demand.NapGroup.Length == 0 ? -1 : groups.IndexOf(demand.NapGroup);
            if (group < 0 && demand.NapGroup.Length > 0)
            {
                group = groups.Count;
                groups.Add(demand.NapGroup);
            }
            SearchWay[] ways = [.. demand.Turns.SelectMany(turn => shapes.WaysOf(demand, turn))];
            ItemKind kind = demand.Flaws.Bearing == FlawBearing.Bears ? ItemKind.BearingPiece : ItemKind.Piece;
            items.Add(new SearchItem(ways, group, demand.Contact, (double)demand.Piece.CuttingLine.TwiceArea / 2, kind));
        }
        double meanSize = shapes.MeanSizeMicrometers();
        foreach (Obstacle obstacle in task.Obstacles)
            items.Add(Still(obstacle, shapes, meanSize));
        return new SearchProblem([.. items], task.Demands.Length, shapes.ToArray(), groups.Count, task) { IsSimplified = shapes.IsSimplified };
    }

    private static SearchItem Still(Obstacle obstacle, ShapeTable shapes, double meanSize)
    {
        SearchWay way = shapes.WayOf(obstacle.Area, Math.Min(meanSize, ShapeTable.SizeOf(obstacle.Area)));
        return new SearchItem([way], -1, FoldContact.Free, 0, obstacle.Kind == ObstacleKind.Flaw ? ItemKind.Flaw : ItemKind.NoCloth);
    }

    public double SizeOf(int shape) => _shapes[shape].SizeMicrometers;

    /// <summary>Bounds of a shape, the gap included.</summary>
    public Box BoundsOf(int shape) => _shapes[shape].Reach.Bounds;

    /// <summary>Lowest place across the lay.</summary>
    public double LowY(int item, int way) => Items[item].Ways[way].Seat.LowY;

    /// <summary>Highest place across the lay.</summary>
    public double HighY(int item, int way) => Items[item].Ways[way].Seat.HighY;

    /// <summary>Least place along the lay.</summary>
    public double LowX(int item, int way)
    {
        ref readonly SearchWay found = ref Items[item].Ways[way];
        return found.Seat.X ?? -found.Room.MinX;
    }

    /// <summary>Greatest place along a lay of some length; below <see cref="LowX"/> when the lay is too short.</summary>
    public double HighX(int item, int way, double length)
    {
        ref readonly SearchWay found = ref Items[item].Ways[way];
        return found.Seat.X ?? length - found.Room.MaxX;
    }

    /// <summary>A state with the obstacles where they are and no piece placed.</summary>
    public LayState EmptyState()
    {
        LayState state = new(Items.Length, PhaseCount);
        state.Way.AsSpan(0, PieceCount).Fill(-1);
        return state;
    }

    /// <summary>Whether two items have to keep off each other.</summary>
    public bool KeepApart(int item, int other) =>
        !(Items[item].Kind == ItemKind.BearingPiece && Items[other].Kind == ItemKind.Flaw);
}
