using System.Collections.Immutable;
using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Reads the job of a command, or says why nothing can be done with it.</summary>
internal static class JobOpening
{
    /// <summary>Runs the rest of the command on a good job, with what was noticed in reading it; else prints every problem.</summary>
    /// <param name="path">The job file.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="doors">Where jobs come from.</param>
    /// <param name="obstacles">What else stands in the way, told before the search.</param>
    /// <param name="run">The rest.</param>
    public static ExitCode Run(string path, Terminal terminal, Doors doors, Func<Job, ImmutableArray<Problem>> obstacles, Func<Job, ImmutableArray<Problem>, ExitCode> run)
    {
        JobReading reading = doors.ReadJob(path);
        ImmutableArray<Problem> problems = reading.Job is { } read ? obstacles(read) : reading.Problems;
        if (reading.Job is { } job && problems.IsEmpty)
            return run(job, reading.Problems);
        ProblemLines.Write(terminal.Error, problems);
        return ExitCodes.Of([], problems, null);
    }
}
