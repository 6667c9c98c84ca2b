using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>Changes a stuck lay so much that removing its overlaps may find another way out.</summary>
internal sealed class Disturbance(SearchProblem problem, RandomStream random)
{
    private const int MostDraws = 10;

    /// <summary>An item is small beside another when its area is less than this part of the other's.</summary>
    private const double SmallRatio = 0.5;

    private readonly int[] _goesWith = new int[problem.PieceCount];

    /// <summary>Swaps the places of two unlike items of the larger half, each with the small ones that lie within its bounds.</summary>
    /// <param name="state">The stuck lay; places may leave it, and its severities are out of date afterwards.</param>
    public void SwapTwo(LayState state)
    {
        int first = LargeItem();
        int second = LargeItem();
        for (int i = 0; i < MostDraws && problem.Items[first].AreaSquareMicrometers == problem.Items[second].AreaSquareMicrometers; i++)
            second = LargeItem();
        if (first == second)
            return;
        (double firstX, double firstY) = Middle(state, first);
        (double secondX, double secondY) = Middle(state, second);
        for (int item = 0; item < problem.PieceCount; item++)
            _goesWith[item] = item == first || LiesWithin(state, item, first) ? 1 : item == second || LiesWithin(state, item, second) ? -1 : 0;
        for (int item = 0; item < problem.PieceCount; item++)
        {
            state.X[item] += _goesWith[item] * (secondX - firstX);
            state.Y[item] += _goesWith[item] * (secondY - firstY);
        }
    }

    private bool LiesWithin(LayState state, int item, int large)
    {
        if (problem.Items[item].AreaSquareMicrometers > SmallRatio * problem.Items[large].AreaSquareMicrometers)
            return false;
        Box room = problem.Items[large].Ways[state.Way[large]].Room;
        (double x, double y) = Middle(state, item);
        x -= state.X[large];
        y -= state.Y[large];
        return x > room.MinX && x < room.MaxX && y > room.MinY && y < room.MaxY;
    }

    private (double X, double Y) Middle(LayState state, int item)
    {
        Box room = problem.Items[item].Ways[state.Way[item]].Room;
        return (state.X[item] + (room.MinX + room.MaxX) / 2.0, state.Y[item] + (room.MinY + room.MaxY) / 2.0);
    }

    /// <summary>The larger of two random items.</summary>
    private int LargeItem()
    {
        int first = random.Below(problem.PieceCount);
        int second = random.Below(problem.PieceCount);
        return problem.Items[first].AreaSquareMicrometers >= problem.Items[second].AreaSquareMicrometers ? first : second;
    }
}
