using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Input;
using Nestmark.Output;
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
        Option<string?> folder = new("--out") { Description = "Folder for pieces.pdf, a sheet of every piece as it was read. Without it no file is written.", HelpName = "DIR" };
        Option<bool> force = new("--force") { Description = "Replace a pieces.pdf in the folder that did not come from this job." };
        Command command = new(Name, "Read the job, show its pieces and say what is wrong; with --out also draw them.") { job, folder, force };
        folder.Validators.Add(result =>
        {
            if (string.IsNullOrWhiteSpace(result.GetValueOrDefault<string>()))
                result.AddError("--out takes the name of a folder, and it is empty.");
        });
        command.SetAction(parsed => (int)Run(
            new CheckOptions(parsed.GetRequiredValue(job), parsed.GetValue(folder), parsed.GetValue(force) ? Replacing.AnyFile : Replacing.OwnFiles), terminal, doors));
        return command;
    }

    /// <summary>Prints the pieces as read, every problem, and their number; writes the piece sheet where one is asked for.</summary>
    public static ExitCode Run(CheckOptions options, Terminal terminal, Doors doors)
    {
        JobReading reading = doors.ReadJob(options.JobFile);
        List<Problem> problems = [.. reading.Problems];
        if (reading.Job is { } job)
        {
            PieceTable.Write(terminal.Out, job);
            problems.AddRange(Planner.Check(job));
        }
        ProblemLines.Write(terminal.Out, problems);
        terminal.Out.WriteLine(ProblemLines.Count(problems));
        if (options.Folder is not null)
            problems.AddRange(WriteSheet(reading.Job, problems, options, terminal, doors));
        return ExitCodes.Of([], problems, null);
    }

    private static ImmutableArray<Problem> WriteSheet(Job? job, List<Problem> problems, CheckOptions options, Terminal terminal, Doors doors)
    {
        if (job is null)
        {
            terminal.Out.WriteLine("No piece sheet was written: it can be drawn once the job can be read.");
            return [];
        }
        WrittenFiles written = doors.WritePieces(job, [.. problems], options);
        if (written.Problems.IsEmpty)
            terminal.Out.WriteLine($"Written to {written.Folder}: {string.Join(", ", written.Names)}");
        ProblemLines.Write(terminal.Error, written.Problems);
        return written.Problems;
    }
}
