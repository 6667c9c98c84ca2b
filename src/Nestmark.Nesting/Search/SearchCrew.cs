using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>Several threads that search on their own and share the best lay between stages, so that the same steps give the same lay.</summary>
internal sealed class SearchCrew
{
    private const int CompressStages = 4;

    private readonly SearchSettings _settings;
    private readonly Allowance[] _allowances;
    private readonly RandomStream[] _randoms;
    private readonly Lock _reporting = new();
    private double _reported = double.MaxValue;

    public SearchCrew(SearchSettings settings)
    {
        _settings = settings;
        _allowances = [.. Enumerable.Range(0, settings.Threads).Select(_ => new Allowance(settings.Stop, settings.Cancellation))];
        _randoms = [.. Enumerable.Range(1, settings.Threads).Select(thread => new RandomStream(settings.Seed, thread))];
    }

    /// <summary>Lays without overlaps, each shorter than the one before; the first is the start.</summary>
    public List<LayState> Run(SearchProblem problem, SearchTuning tuning, GreedyLay start, double exploreUntil, double compressUntil)
    {
        List<LayState> better = [start.State];
        double begin = _allowances.Max(allowance => allowance.SpentRatio);
        if (begin >= compressUntil)
            return better;
        Shortening[] threads = [.. _randoms.Select((random, i) => new Shortening(problem, tuning, random, _allowances[i], start.State, start.Headings) { Improved = Report })];
        _settings.Effort?.Follow(threads, _allowances);
        for (int stage = 1; stage <= tuning.ExploreStages && begin < exploreUntil; stage++)
        {
            RunStage(threads, begin + (exploreUntil - begin) * stage / tuning.ExploreStages, thread => thread.Explore(exploreUntil));
            Share(threads, better);
        }
        double from = Math.Max(begin, exploreUntil);
        for (int stage = 1; stage <= CompressStages; stage++)
        {
            RunStage(threads, from + (compressUntil - from) * stage / CompressStages, thread => thread.Compress(from, compressUntil));
            Share(threads, better);
        }
        return better;
    }

    /// <summary>The headings that the items of a lay have.</summary>
    public static int[] HeadingsOf(SearchProblem problem, LayState state)
    {
        int[] headings = new int[problem.GroupCount];
        for (int item = 0; item < problem.PieceCount; item++)
        {
            if (problem.Items[item].Group >= 0 && state.Way[item] >= 0)
                headings[problem.Items[item].Group] = problem.Items[item].Ways[state.Way[item]].Heading;
        }
        return headings;
    }

    private void RunStage(Shortening[] threads, double until, Action<Shortening> run)
    {
        foreach (Allowance allowance in _allowances)
            allowance.RunUntil(until);
        if (threads.Length == 1)
        {
            run(threads[0]);
            return;
        }
        Task[] tasks = [.. threads.Select(thread => Task.Factory.StartNew(
            () => run(thread), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default))];
        Task.WaitAll(tasks);
    }

    /// <summary>Gives every thread the shortest lay; of equal ones that of the first thread.</summary>
    private static void Share(Shortening[] threads, List<LayState> better)
    {
        Shortening best = threads[0];
        foreach (Shortening thread in threads)
        {
            if (thread.Best.Length < best.Best.Length)
                best = thread;
        }
        foreach (Shortening thread in threads)
            thread.Adopt(best.Best, best.BestHeadings);
        if (best.Best.Length < better[^1].Length)
            better.Add(best.Best.Copy());
    }

    private void Report(LayState state)
    {
        lock (_reporting)
        {
            if (state.Length >= _reported)
                return;
            _reported = state.Length;
            _settings.Report(new SearchProgress(Length.FromMicrometers((long)Math.Ceiling(state.Length)), _allowances.Sum(allowance => allowance.Steps)));
        }
    }
}
