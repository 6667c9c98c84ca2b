namespace Nestmark.Nesting.Search;

/// <summary>Works out the severities of all pairs of a state.</summary>
internal static class SeverityTable
{
    /// <summary>Fills every row; items that are not placed overlap nothing.</summary>
    public static void Fill(SearchProblem problem, LayState state)
    {
        Overlaps overlaps = new(problem);
        Array.Clear(state.Severity);
        for (int item = 0; item < problem.PieceCount; item++)
        {
            if (state.Way[item] < 0)
                continue;
            overlaps.Prepare(state, [], item, state.Way[item]);
            overlaps.WriteSeverities(state, state.X[item], state.Y[item]);
        }
    }
}
