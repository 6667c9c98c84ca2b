using Nestmark.Geometry;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>A lay task turned into what the search works on; shared by all threads and not changed by them.</summary>
internal sealed class SearchProblem
{
    private readonly SearchShape[] _shapes;
    private readonly PairFits _fits;

    /// <summary>Whether any outline has fewer corners than the true one.</summary>
    public bool IsSimplified { get; private init; }

    private SearchProblem(SearchItem[] items, SearchShape[] shapes, int groups, LayTask task)
    {
        Items = items;
        _shapes = shapes;
        _fits = new PairFits([.. shapes.Select(shape => shape.Reach)]);
        GroupCount = groups;
        DepthMicrometers = task.Surface.Depth.Micrometers;
        GapMicrometers = task.Gap.Micrometers;
        MeanSizeMicrometers = shapes.Average(shape => shape.SizeMicrometers);
        AreaSquareMicrometers = items.Sum(item => item.AreaSquareMicrometers);
    }

    public SearchItem[] Items { get; }

    public int GroupCount { get; }

    public double DepthMicrometers { get; }

    public double GapMicrometers { get; }

    /// <summary>Mean size of the shapes; the unit of severities.</summary>
    public double MeanSizeMicrometers { get; }

    /// <summary>Sum over one layer of every item.</summary>
    public double AreaSquareMicrometers { get; }

    /// <summary>No lay can be shorter.</summary>
    public double LowerBoundMicrometers => Math.Max(
        AreaSquareMicrometers / DepthMicrometers,
        Items.Max(item => item.Ways.Min(way => (double)way.Room.Width)));

    /// <summary>Reads the task.</summary>
    /// <param name="task">One demand or more, each fitting the depth of the lay in one of its turns.</param>
    /// <param name="tolerance">How far outlines may be simplified, always outward; zero keeps them as they are.</param>
    public static SearchProblem Of(LayTask task, Length tolerance)
    {
        ShapeTable shapes = new(task, tolerance);
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
            SearchWay[] ways = [.. demand.Turns.Select(turn => shapes.WayOf(demand, turn)).Where(way => way.Room.Height <= task.Surface.Depth.Micrometers)];
            items.Add(new SearchItem(ways, group, demand.Contact, (double)demand.Piece.CuttingLine.TwiceArea / 2));
        }
        return new SearchProblem([.. items], shapes.ToArray(), groups.Count, task) { IsSimplified = shapes.IsSimplified };
    }

    /// <summary>The no-fit polygon of two shapes; the still one's index is not above the moving one's.</summary>
    public PairFit FitOf(int still, int moving) => _fits.Of(still, moving);

    public double SizeOf(int shape) => _shapes[shape].SizeMicrometers;

    /// <summary>Lowest place across the lay.</summary>
    public double LowY(int item, int way) => Items[item].Contact == FoldContact.OnFold ? 0 : -Items[item].Ways[way].Room.MinY;

    /// <summary>Highest place across the lay.</summary>
    public double HighY(int item, int way) =>
        Items[item].Contact == FoldContact.OnFold ? 0 : DepthMicrometers - Items[item].Ways[way].Room.MaxY;

    /// <summary>Least place along the lay.</summary>
    public double LowX(int item, int way) => -Items[item].Ways[way].Room.MinX;

    /// <summary>Greatest place along a lay of some length; below <see cref="LowX"/> when the lay is too short.</summary>
    public double HighX(int item, int way, double length) => length - Items[item].Ways[way].Room.MaxX;
}
