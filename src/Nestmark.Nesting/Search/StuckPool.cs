namespace Nestmark.Nesting.Search;

/// <summary>The least severe of the lays that could not be freed, to be disturbed and tried again.</summary>
/// <remarks>After J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, section 9.1; how one is picked is our own.</remarks>
internal sealed class StuckPool(SearchTuning tuning, RandomStream random)
{
    private readonly List<Entry> _kept = [];

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => _kept.Count == 0;

    /// <summary>Forgets all.</summary>
    public void Clear() => _kept.Clear();

    /// <summary>Keeps a copy of a lay, unless there are enough that are less severe.</summary>
    public void Add(LayState state, ReadOnlySpan<int> headings)
    {
        double severity = state.Severities.Total();
        int at = _kept.FindIndex(entry => entry.Severity > severity);
        if (at < 0 && _kept.Count == tuning.PoolSize)
            return;
        if (_kept.Count == tuning.PoolSize)
            _kept.RemoveAt(_kept.Count - 1);
        _kept.Insert(at < 0 ? _kept.Count : at, new Entry(severity, state.Copy(), headings.ToArray()));
    }

    /// <summary>Takes over one of them, the less severe the likelier.</summary>
    public void Pick(LayState state, Span<int> headings)
    {
        double ratio = Math.Min(Math.Abs(random.Bell()) * tuning.PoolSpread, 1);
        Entry picked = _kept[(int)Math.Min(ratio * _kept.Count, _kept.Count - 1)];
        state.Take(picked.State);
        picked.Headings.CopyTo(headings);
    }

    private sealed record Entry(double Severity, LayState State, int[] Headings);
}
