using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary><c>nestmark lay JOB</c>: makes the marker and writes the files.</summary>
internal static class LayCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "lay";

    private const double UsualSeconds = 10;
    private const int MostThreadsUnasked = 4;

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors, CancellationToken stop)
    {
        Argument<string> job = new("JOB") { Description = "The job file." };
        Option<string> folder = new("--out") { Description = "Folder for the files.", HelpName = "DIR", DefaultValueFactory = _ => "out" };
        Option<double?> seconds = NumberOptions.Decimal("--seconds", 0, 86_400, "How long to search, all cloths together. [default: 10]");
        Option<long?> steps = NumberOptions.Whole("--steps", 0, 1_000_000_000_000, "Search by steps instead, all threads together: the same on every run.");
        Option<long?> threads = NumberOptions.Whole("--threads", 1, 64, "Threads to search with. [default: the machine's cores, at most 4]");
        Option<long?> seed = NumberOptions.Whole("--seed", long.MinValue, long.MaxValue, "Another seed is another try. [default: 1]");
        Option<Paper?> paper = PaperOption();
        Option<bool> force = new("--force") { Description = "Replace files in the folder that did not come from this job." };
        Option<bool> quiet = new("--quiet") { Description = "Print only what to buy and what is wrong." };
        Command command = new(Name, "Make the marker: cloth to buy, guide sheet, full-size marker to print.") { job, folder, seconds, steps, threads, seed, paper, force, quiet };
        command.Validators.Add(result =>
        {
            if (result.GetResult(seconds) is not null && result.GetResult(steps) is not null)
                result.AddError("--seconds and --steps exclude each other: give one of them.");
        });
        folder.Validators.Add(result =>
        {
            if (string.IsNullOrWhiteSpace(result.GetValueOrDefault<string>()))
                result.AddError("--out takes the name of a folder, and it is empty.");
        });
        command.SetAction(parsed => (int)Run(OptionsOf(parsed), terminal, doors, stop));
        return command;

        LayOptions OptionsOf(ParseResult parsed) => new(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(folder),
            EffortOf(parsed.GetValue(seconds), parsed.GetValue(steps), parsed.GetValue(threads), parsed.GetValue(seed)),
            parsed.GetValue(paper),
            parsed.GetValue(force) ? Replacing.AnyFile : Replacing.OwnFiles,
            parsed.GetValue(quiet) ? Talk.Quiet : Talk.Full);
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
        if (options.Talk == Talk.Quiet)
            return Planner.Make(job, options.Effort, (_, _) => { }, stop);
        using ProgressLines progress = new(terminal, job.System);
        return Planner.Make(job, options.Effort, progress.Report, stop);
    }

    private static Effort EffortOf(double? seconds, long? steps, long? threads, long? seed) => new(
        steps is null ? seconds ?? UsualSeconds : null,
        steps,
        (int)(threads ?? Math.Min(Environment.ProcessorCount, MostThreadsUnasked)),
        seed ?? 1);

    private static Option<Paper?> PaperOption() => new("--paper")
    {
        Description = "Paper for the full-size marker: a4, letter, a3, a0, or a roll as roll:914mm. [default: a4, or letter for jobs in inches]",
        HelpName = "P",
        CustomParser = result =>
        {
            PaperReading reading = Paper.Read(result.Tokens[0].Value);
            if (reading.Paper is null)
                result.AddError(reading.Message);
            return reading.Paper;
        },
    };
}
