using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Input;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Cli;

/// <summary><c>nestmark lay JOB</c>: makes the marker and writes the files.</summary>
internal static class LayCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "lay";

    private const double UsualSeconds = 10;

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors, CancellationToken stop)
    {
        Argument<string> job = new("JOB") { Description = "The job file." };
        Option<string> folder = CommonOptions.Folder();
        Option<double?> seconds = CommonOptions.Seconds("How long to search, all cloths together. [default: 10]");
        Option<long?> steps = CommonOptions.Steps("Search by steps instead, all threads together: the same on every run.");
        Option<long?> threads = CommonOptions.Threads("Threads to search with. [default: the machine's cores, at most 4]");
        Option<long?> seed = CommonOptions.Seed();
        Option<Paper?> paper = CommonOptions.PaperOption();
        Option<bool> advise = new("--advise") { Description = "Then try what would need less cloth: other folds, wider cloth and so on. Takes half of the time." };
        Option<bool> leftovers = new("--leftovers") { Description = "Cut what comes out of the leftovers of the job from them, and buy only for the rest, which is laid open." };
        Option<bool> force = CommonOptions.Force();
        Option<bool> quiet = new("--quiet") { Description = "Print only what to buy and what is wrong." };
        Command command = new(Name, "Make the marker: cloth to buy, guide sheet, full-size marker to print.") { job, folder, seconds, steps, threads, seed, paper, advise, leftovers, force, quiet };
        CommonOptions.RefuseBoth(command, seconds, steps);
        command.Validators.Add(result =>
        {
            if (result.GetValue(advise) && result.GetValue(leftovers))
                result.AddError("--advise and --leftovers exclude each other: give one of them.");
        });
        command.SetAction(parsed => (int)Run(OptionsOf(parsed), terminal, doors, stop));
        return command;

        LayOptions OptionsOf(ParseResult parsed) => new(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(folder),
            CommonOptions.EffortOf(UsualSeconds, parsed.GetValue(seconds), parsed.GetValue(steps), parsed.GetValue(threads), parsed.GetValue(seed)),
            parsed.GetValue(paper),
            parsed.GetValue(force) ? Replacing.AnyFile : Replacing.OwnFiles,
            parsed.GetValue(quiet) ? Talk.Quiet : Talk.Full)
        {
            Advising = parsed.GetValue(advise) ? Advising.Asked : Advising.Unasked,
            Leftovers = parsed.GetValue(leftovers) ? LeftoverUse.First : LeftoverUse.None,
        };
    }

    /// <summary>Reads the job, plans it, writes the files and says what came out.</summary>
    public static ExitCode Run(LayOptions options, Terminal terminal, Doors doors, CancellationToken stop)
    {
        JobReading reading = doors.ReadJob(options.JobFile);
        if (reading.Job is not { } job)
        {
            ProblemLines.Write(terminal.Error, reading.Problems);
            return ExitCodes.Of([], reading.Problems, null);
        }
        ImmutableArray<Problem> obstacles = doors.FindObstacles(job, options);
        if (!obstacles.IsEmpty)
        {
            ProblemLines.Write(terminal.Error, obstacles);
            return ExitCodes.Of([], obstacles, null);
        }
        Plan plan = Planned(job, options, terminal, stop);
        plan = plan with { Notes = [.. reading.Problems, .. plan.Notes] };
        WrittenFiles written = doors.WriteFiles(plan, options);
        LaySummary.Write(terminal.Out, plan, written, options.Talk);
        if (stop.IsCancellationRequested)
            terminal.Out.WriteLine("Stopped early: this is the best marker found by then.");
        ProblemLines.Write(terminal.Error, written.Problems);
        return ExitCodes.Of([], written.Problems, plan);
    }

    private static Plan Planned(Job job, LayOptions options, Terminal terminal, CancellationToken stop)
    {
        using ProgressLines? progress = options.Talk == Talk.Quiet ? null : new(terminal, job.System);
        Action<string, SearchProgress> report = progress is null ? (_, _) => { } : progress.Report;
        if (options.Leftovers == LeftoverUse.First)
            return FitPlanner.LeftoversFirst(job, options.Effort, report, stop);
        return options.Advising == Advising.Asked
            ? SavingSearch.Make(job, options.Effort, report, stop)
            : Planner.Make(job, options.Effort, report, stop);
    }
}
