using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Nesting;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Cli;

/// <summary><c>nestmark lay JOB</c>: makes the marker and writes the files.</summary>
internal static class LayCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "lay";

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors, CancellationToken stop)
    {
        MarkerOptions options = new(
            "The job file.",
            "How long to search, all cloths together.",
            "Search by steps instead, all threads together: the same on every run.",
            "Print only what to buy and what is wrong.");
        Option<long?> threads = CommonOptions.Threads("Threads to search with. [default: the machine's cores, at most 4]");
        Option<bool> advise = new("--advise") { Description = "Then try what would need less cloth: other folds, wider cloth and so on. Takes half of the time." };
        Option<bool> leftovers = new("--leftovers") { Description = "Cut what comes out of the leftovers of the job from them, and buy only for the rest, which is laid open." };
        Command command = options.CommandOf(Name, "Make the marker: cloth to buy, guide sheet, full-size marker to print.", threads, advise, leftovers);
        command.Validators.Add(result =>
        {
            if (result.GetValue(advise) && result.GetValue(leftovers))
                result.AddError("--advise and --leftovers exclude each other: give one of them.");
        });
        command.SetAction(parsed => (int)Run(OptionsOf(parsed), terminal, doors, stop));
        return command;

        LayOptions OptionsOf(ParseResult parsed) => options.Of(parsed, parsed.GetValue(threads)) with
        {
            Advising = parsed.GetValue(advise) ? Advising.Asked : Advising.Unasked,
            Leftovers = parsed.GetValue(leftovers) ? LeftoverUse.First : LeftoverUse.None,
        };
    }

    /// <summary>Reads the job, plans it, writes the files and says what came out.</summary>
    public static ExitCode Run(LayOptions options, Terminal terminal, Doors doors, CancellationToken stop) => JobOpening.Run(
        options.JobFile, terminal, doors, job => doors.FindObstacles(job, options), (job, notes) => Lay(job, notes, options, terminal, doors, stop));

    private static ExitCode Lay(Job job, ImmutableArray<Problem> notes, LayOptions options, Terminal terminal, Doors doors, CancellationToken stop)
    {
        Plan plan = Planned(job, options, terminal, stop);
        plan = plan with { Notes = [.. notes, .. plan.Notes] };
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
