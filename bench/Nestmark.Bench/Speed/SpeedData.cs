using Nestmark.Bench.Garments;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Nesting.Search;

namespace Nestmark.Bench.Speed;

/// <summary>What the benchmarks work on: the invented coat, seed 1.</summary>
internal static class SpeedData
{
    /// <summary>25 placements on open cloth.</summary>
    public static LayTask Coat() => Task("open-25");

    /// <summary>150 placements on open cloth.</summary>
    public static LayTask Studio() => Task("open-150");

    /// <summary>The coat as the search sees it at first.</summary>
    public static SearchProblem Rough(LayTask task) => SearchProblem.Of(task, SearchTuning.Default.Tolerance);

    /// <summary>A greedy lay of it.</summary>
    public static LayState Greedy(SearchProblem problem) => GreedyOrders.LargestFirst(problem, GreedyLines.AtEnds).State;

    private static LayTask Task(string name) => GarmentCase.All.First(one => one.Name == name).Task(1, Length.Zero, Angle.Zero);
}
