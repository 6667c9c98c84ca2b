namespace Nestmark.Nesting.Search;

/// <summary>Works out the severities of all pairs of a state.</summary>
internal sealed class SeverityTable
{
    private readonly SearchProblem _problem;
    private readonly Surroundings _laid;
    private readonly Overlaps _overlaps;

    public SeverityTable(SearchProblem problem)
    {
        _problem = problem;
        _laid = new Surroundings(problem);
        _overlaps = new Overlaps(problem, _laid, PairTable.Empty);
    }

    /// <summary>Fills all pairs; items that are not placed overlap nothing.</summary>
    public void Fill(LayState state)
    {
        _laid.Clear();
        state.Severities.Settle();
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            if (state.Way[item] < 0)
                continue;
            _overlaps.Prepare(item, state.Way[item]);
            _overlaps.WriteSeverities(state, state.X[item], state.Y[item]);
            _laid.Put(item, state.Way[item], state.X[item], state.Y[item]);
        }
    }
}
