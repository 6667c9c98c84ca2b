namespace Nestmark.Yardage;

/// <summary>The one door to the core: from a job to its plan.</summary>
public static class Planner
{
    /// <summary>Plans every cloth of the job.</summary>
    /// <param name="job">The job, without errors.</param>
    /// <param name="effort">How long and how the search may run.</param>
    /// <param name="report">Called with news: name of the cloth, and how its search stands.</param>
    /// <param name="cancellation">Ends the searches; the best markers so far are kept.</param>
    public static Plan Make(Job job, Effort effort, Action<string, Nesting.SearchProgress> report, CancellationToken cancellation) =>
        throw new NotImplementedException(job.Title + effort + report + cancellation);
}
