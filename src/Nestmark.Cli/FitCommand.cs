using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary><c>nestmark fit JOB</c>: says whether the pieces come out of the leftovers, and draws how.</summary>
internal static class FitCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "fit";

    private const double UsualSeconds = 10;

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors, CancellationToken stop)
    {
        Argument<string> job = new("JOB") { Description = "The job file, with remnants." };
        Option<string> folder = CommonOptions.Folder();
        Option<double?> seconds = CommonOptions.Seconds("How long to search at most; it ends as soon as everything fits. [default: 10]");
        Option<long?> steps = CommonOptions.Steps("Search by steps instead: the same on every run.");
        Option<long?> seed = CommonOptions.Seed();
        Option<Paper?> paper = CommonOptions.PaperOption();
        Option<bool> force = CommonOptions.Force();
        Option<bool> quiet = new("--quiet") { Description = "Print only the verdict and what is wrong." };
        Command command = new(Name, "Find out whether the pieces come out of the leftovers of the job, and what is missing.") { job, folder, seconds, steps, seed, paper, force, quiet };
        CommonOptions.RefuseBoth(command, seconds, steps);
        command.SetAction(parsed => (int)Run(OptionsOf(parsed), terminal, doors, stop));
        return command;

        LayOptions OptionsOf(ParseResult parsed) => new(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(folder),
            CommonOptions.EffortOf(UsualSeconds, parsed.GetValue(seconds), parsed.GetValue(steps), 1, parsed.GetValue(seed)),
            parsed.GetValue(paper),
            parsed.GetValue(force) ? Replacing.AnyFile : Replacing.OwnFiles,
            parsed.GetValue(quiet) ? Talk.Quiet : Talk.Full);
    }

    /// <summary>Reads the job, looks for places, writes the files and gives the verdict.</summary>
    public static ExitCode Run(LayOptions options, Terminal terminal, Doors doors, CancellationToken stop)
    {
        JobReading reading = doors.ReadJob(options.JobFile);
        if (reading.Job is not { } job)
        {
            ProblemLines.Write(terminal.Error, reading.Problems);
            return ExitCodes.Of([], reading.Problems, null);
        }
        ImmutableArray<Problem> obstacles = [.. FitPlanner.Obstacles(job), .. doors.FindObstacles(job, options)];
        if (!obstacles.IsEmpty)
        {
            ProblemLines.Write(terminal.Error, obstacles);
            return ExitCodes.Of([], obstacles, null);
        }
        FitPlan fit = FitPlanner.Make(job, options.Effort, stop);
        WrittenFiles written = doors.WriteFiles(fit.Plan with { Notes = [.. reading.Problems, .. fit.Plan.Notes] }, options);
        foreach (string line in FitSentences.Of(fit))
            terminal.Out.WriteLine(line);
        if (options.Talk == Talk.Full && written.Names.Length > 0)
            terminal.Out.WriteLine($"Written to {written.Folder}: {string.Join(", ", written.Names)}");
        if (stop.IsCancellationRequested)
            terminal.Out.WriteLine("Stopped early: this is the best found by then.");
        ProblemLines.Write(terminal.Error, written.Problems);
        return fit.IsComplete && written.Problems.IsEmpty ? ExitCode.Planned : ExitCode.Problems;
    }
}
