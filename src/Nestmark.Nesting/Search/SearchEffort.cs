namespace Nestmark.Nesting.Search;

/// <summary>What a search does, for measuring it; may be asked while it runs, and is then a little behind.</summary>
/// <remarks>Keeps the state of all threads in memory: not for runs whose memory is measured.</remarks>
internal sealed class SearchEffort
{
    private readonly List<Shortening> _threads = [];
    private readonly Lock _adding = new();
    private Allowance[] _allowances = [];

    /// <summary>Steps of all threads: pieces placed anew.</summary>
    public long Steps => _allowances.Sum(allowance => allowance.Steps);

    /// <summary>Places judged by all threads, those of the greedy pass left out.</summary>
    public long JudgedPlaces
    {
        get
        {
            lock (_adding)
                return _threads.Sum(thread => thread.JudgedPlaces);
        }
    }

    /// <summary>Runs begun by all threads.</summary>
    public int Runs
    {
        get
        {
            lock (_adding)
                return _threads.Sum(thread => thread.Runs);
        }
    }

    /// <summary>Counts these threads too.</summary>
    public void Follow(IEnumerable<Shortening> threads, Allowance[] allowances)
    {
        lock (_adding)
            _threads.AddRange(threads);
        _allowances = allowances;
    }
}
