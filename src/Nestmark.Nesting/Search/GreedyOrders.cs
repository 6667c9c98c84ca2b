namespace Nestmark.Nesting.Search;

/// <summary>The orders in which the greedy pass is tried: large before small by several measures, pieces for the fold first where there are any, then the best one shuffled a little.</summary>
internal static class GreedyOrders
{
    private const int MostPasses = 12;

    /// <summary>The shortest of several greedy lays.</summary>
    /// <param name="problem">What to lay.</param>
    /// <param name="random">Shuffles the later orders.</param>
    /// <param name="threads">Threads that make no-fit polygons.</param>
    /// <param name="isOver">Asked before each lay but the first.</param>
    /// <param name="isGivenUp">Asked before each item.</param>
    /// <returns><c>null</c> when even the first was given up.</returns>
    public static GreedyLay? Best(SearchProblem problem, RandomStream random, int threads, Func<bool> isOver, Func<bool> isGivenUp)
    {
        GreedyConstruction construction = new(problem, GreedyLines.AtEnds, threads);
        int passes = Math.Clamp(600 / problem.PieceCount, 1, MostPasses);
        GreedyLay? best = null;
        int[] bestOrder = [];
        for (int pass = 0; pass < passes && (pass == 0 || !isOver()); pass++)
        {
            int[] order = pass < Measures.Length ? Sorted(problem, Measures[pass]) : Shuffled(problem, bestOrder, random, 0.2);
            int[] headings = [.. Enumerable.Range(0, problem.GroupCount).Select(group => pass % 2 == 0 ? 0 : group % 2)];
            LayState? state = construction.Lay(order, headings, isGivenUp);
            if (state is null)
                return best;
            if (best is not null && state.Length >= best.State.Length)
                continue;
            best = new GreedyLay(state, headings);
            bestOrder = order;
        }
        return best;
    }

    /// <summary>One greedy lay with the largest items first.</summary>
    public static GreedyLay LargestFirst(SearchProblem problem, GreedyLines lines)
    {
        int[] headings = new int[problem.GroupCount];
        return new GreedyLay(new GreedyConstruction(problem, lines, 1).Lay(Sorted(problem, Measures[0]), headings), headings);
    }

    /// <summary>A greedy lay in an order by one of the measures, much shuffled.</summary>
    /// <param name="problem">What to lay.</param>
    /// <param name="construction">Lays it.</param>
    /// <param name="random">Chooses the order and the headings.</param>
    /// <param name="isGivenUp">Asked before each item.</param>
    /// <returns><c>null</c> when it was given up.</returns>
    public static GreedyLay? Random(SearchProblem problem, GreedyConstruction construction, RandomStream random, Func<bool> isGivenUp)
    {
        int[] order = Shuffled(problem, Sorted(problem, Measures[random.Below(Measures.Length)]), random, 0.5);
        int[] headings = [.. Enumerable.Range(0, problem.GroupCount).Select(_ => random.Below(2))];
        return construction.Lay(order, headings, isGivenUp) is { } state ? new GreedyLay(state, headings) : null;
    }

    /// <summary>The orders by measure, without chance.</summary>
    public static IEnumerable<int[]> ByMeasure(SearchProblem problem) => Measures.Select(measure => Sorted(problem, measure));

    private static readonly Func<SearchItem, double>[] Measures =
    [
        item => item.AreaSquareMicrometers,
        item => item.Ways[0].Room.Width,
        item => item.Ways[0].Room.Height,
        item => item.Ways[0].Room.Width + item.Ways[0].Room.Height,
    ];

    private static int[] Sorted(SearchProblem problem, Func<SearchItem, double> measure) =>
    [
        .. Enumerable.Range(0, problem.PieceCount)
            .OrderByDescending(item => problem.Items[item].Contact == FoldContact.OnFold)
            .ThenByDescending(item => measure(problem.Items[item])),
    ];

    /// <summary>Each item moves at random by up to a part of the order; those for a fold across the cloth, which is only so long, stay in front.</summary>
    private static int[] Shuffled(SearchProblem problem, int[] order, RandomStream random, double part)
    {
        double spread = order.Length * part + 1;
        return
        [
            .. order.Select((item, place) => (item, Key: place + spread * random.Ratio()))
                .OrderByDescending(pair => problem.Items[pair.item].Ways[0].Seat.X is not null)
                .ThenBy(pair => pair.Key)
                .Select(pair => pair.item),
        ];
    }
}
