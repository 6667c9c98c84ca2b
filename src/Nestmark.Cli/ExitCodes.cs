using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Cli;

/// <summary>The one place where a run's exit code is decided.</summary>
internal static class ExitCodes
{
    /// <summary>The code for a run.</summary>
    /// <param name="commandLineFaults">What is wrong with the command line.</param>
    /// <param name="problems">Everything found in job, plan and files; notes do not count.</param>
    /// <param name="plan">The plan, or <c>null</c> when none was asked for or could be made.</param>
    public static ExitCode Of(IReadOnlyCollection<string> commandLineFaults, IEnumerable<Problem> problems, Plan? plan)
    {
        if (commandLineFaults.Count > 0)
            return ExitCode.WrongCommandLine;
        bool wrong = problems.Any(problem => problem.Severity == Severity.Error) || plan is { IsComplete: false };
        return wrong ? ExitCode.Problems : ExitCode.Planned;
    }

    /// <summary>The code for a chart: cells that cannot be cut are an answer, as long as some can.</summary>
    /// <param name="chart">The chart, perhaps with cells missing.</param>
    /// <param name="problems">What came of keeping and writing it.</param>
    public static ExitCode OfChart(Chart chart, IEnumerable<Problem> problems)
    {
        bool wrong = !chart.IsComplete || problems.Any(problem => problem.Severity == Severity.Error) || !chart.Entries.Any(entry => entry.CanBeCut);
        return wrong ? ExitCode.Problems : ExitCode.Planned;
    }
}
