using Nestmark.Geometry;
using Nestmark.Nesting.Search;

namespace Nestmark.Tests.Nesting.Search;

public sealed class SurroundingsTests
{
    // Judge: the bounds of every outline, one by one.
    [Fact]
    public void Whatever_meets_an_extent_is_found_also_after_moves() => Tasks.Strewn(30_000_000).Check(100, lay =>
    {
        SearchProblem problem = SearchProblem.Of(lay.Task, Length.Zero);
        LayState state = problem.EmptyState();
        for (int item = 0; item < problem.PieceCount; item++)
            (state.Way[item], state.X[item], state.Y[item]) = (item % 7 == 6 ? -1 : 0, lay.Places[item], lay.Places[item + 60] / 40);
        Surroundings surroundings = new(problem);
        surroundings.Look(state);
        CheckAll(problem, state, surroundings);
        foreach (int moved in lay.Moved)
        {
            int item = moved % problem.PieceCount;
            surroundings.Hide(item);
            state.Way[item] = -1;
            Assert.False(surroundings.Holds(item));
            CheckAll(problem, state, surroundings);
            (state.Way[item], state.X[item]) = (problem.Items[item].Ways.Length - 1, lay.Places[moved + 100]);
            surroundings.Put(item, state.Way[item], state.X[item], state.Y[item]);
            CheckAll(problem, state, surroundings);
        }
        surroundings.Look(state);
        CheckAll(problem, state, surroundings);
    });

    private static void CheckAll(SearchProblem problem, LayState state, Surroundings surroundings)
    {
        int[] near = new int[problem.Items.Length];
        for (int item = 0; item < problem.PieceCount; item++)
        {
            if (state.Way[item] < 0)
                continue;
            (double MinX, double MaxX, double MinY, double MaxY) = BoundsOf(problem, state, item);
            Extent extent = new((float)(MinX - Surroundings.Margin), (float)(MaxX + Surroundings.Margin), (float)(MinY - Surroundings.Margin), (float)(MaxY + Surroundings.Margin));
            HashSet<int> found = [.. near.Take(surroundings.Near(extent, near))];
            for (int other = 0; other < problem.PieceCount; other++)
            {
                double apart = state.Way[other] < 0 ? double.MaxValue : Apart(BoundsOf(problem, state, other), (MinX, MaxX, MinY, MaxY));
                if (apart < 0)
                    Assert.Contains(other, found);
                if (apart > 2 * Surroundings.Margin)
                    Assert.DoesNotContain(other, found);
            }
        }
    }

    private static (double MinX, double MaxX, double MinY, double MaxY) BoundsOf(SearchProblem problem, LayState state, int item)
    {
        Box box = problem.BoundsOf(problem.Items[item].Ways[state.Way[item]].Shape);
        return (state.X[item] + box.MinX, state.X[item] + box.MaxX, state.Y[item] + box.MinY, state.Y[item] + box.MaxY);
    }

    /// <summary>How far two boxes lie apart along or across, below 0 where they overlap.</summary>
    private static double Apart((double MinX, double MaxX, double MinY, double MaxY) first, (double MinX, double MaxX, double MinY, double MaxY) second) =>
        new[] { first.MinX - second.MaxX, second.MinX - first.MaxX, first.MinY - second.MaxY, second.MinY - first.MaxY }.Max();
}
