using System.CommandLine;
using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary><c>nestmark check JOB</c>: reads the job and says what is wrong with it.</summary>
internal static class CheckCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "check";

    /// <summary>The command.</summary>
    public static Command Make(Terminal terminal, Doors doors)
    {
        Argument<string> job = new("JOB") { Description = "The job file." };
        Command command = new(Name, "Read the job, show its pieces and say what is wrong; writes no files.") { job };
        command.SetAction(parsed => (int)Run(parsed.GetRequiredValue(job), terminal, doors));
        return command;
    }

    /// <summary>Prints the pieces as read, every problem, and their number.</summary>
    public static ExitCode Run(string jobFile, Terminal terminal, Doors doors)
    {
        JobReading reading = doors.ReadJob(jobFile);
        List<Problem> problems = [.. reading.Problems];
        if (reading.Job is { } job)
        {
            PieceTable.Write(terminal.Out, job);
            SeamTable.Write(terminal.Out, job);
            problems.AddRange(Planner.Check(job));
        }
        ProblemLines.Write(terminal.Out, problems);
        terminal.Out.WriteLine(ProblemLines.Count(problems));
        return ExitCodes.Of([], problems, null);
    }
}
