using Nestmark.Yardage;

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
}
