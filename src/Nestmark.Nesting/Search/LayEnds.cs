namespace Nestmark.Nesting.Search;

/// <summary>Makes a lay begin and end with its items.</summary>
internal static class LayEnds
{
    /// <summary>Moves everything to begin at x = 0, unless it is anchored there, and sets the length to where the farthest item ends.</summary>
    public static void Tighten(SearchProblem problem, LayState state)
    {
        double begin = problem.IsAnchored ? 0 : double.MaxValue;
        double end = 0;
        for (int item = 0; item < problem.PieceCount; item++)
        {
            if (!problem.IsAnchored)
                begin = Math.Min(begin, state.X[item] - problem.LowX(item, state.Way[item]));
            end = Math.Max(end, state.X[item] + problem.Items[item].Ways[state.Way[item]].Room.MaxX);
        }
        for (int item = 0; item < problem.PieceCount; item++)
            state.X[item] -= begin;
        PrintGrid.Move(state.Phases, -begin);
        state.Length = end - begin;
    }
}
