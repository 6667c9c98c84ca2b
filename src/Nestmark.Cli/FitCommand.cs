using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary><c>nestmark fit JOB</c>: says whether the pieces come out of the leftovers, and draws how.</summary>
internal static class FitCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "fit";

    /// <summary>The folder, within that of the files, for the layouts with a change that the job permits.</summary>
    public const string InsteadFolder = "instead";

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors, CancellationToken stop)
    {
        MarkerOptions options = new(
            "The job file, with remnants.",
            "How long to search at most; it ends as soon as everything fits.",
            "Search by steps instead: the same on every run.",
            "Print only the verdict and what is wrong.");
        Command command = options.CommandOf(Name, "Find out whether the pieces come out of the leftovers of the job, and what is missing.", null);
        command.SetAction(parsed => (int)Run(options.Of(parsed, 1), terminal, doors, stop));
        return command;
    }

    /// <summary>Reads the job, looks for places, writes the files and gives the verdict.</summary>
    public static ExitCode Run(LayOptions options, Terminal terminal, Doors doors, CancellationToken stop)
    {
        LayOptions besides = options with { Folder = Path.Combine(options.Folder, InsteadFolder) };
        return JobOpening.Run(options.JobFile, terminal, doors, Obstacles, (job, notes) => Fit(job, notes, besides, options, terminal, doors, stop));

        ImmutableArray<Problem> Obstacles(Job job) => [.. FitPlanner.Obstacles(job), .. doors.FindObstacles(job, options), .. doors.FindObstacles(job, besides)];
    }

    private static ExitCode Fit(Job job, ImmutableArray<Problem> notes, LayOptions besides, LayOptions options, Terminal terminal, Doors doors, CancellationToken stop)
    {
        FitPlan fit = FitPlanner.Make(job, options.Effort, stop);
        foreach (string line in FitSentences.Of(fit))
            terminal.Out.WriteLine(line);
        foreach (Problem note in options.Talk == Talk.Full ? [.. notes, .. fit.Plan.Notes] : ImmutableArray<Problem>.Empty)
            terminal.Out.WriteLine("note: " + NoteWords.Of(job, note));
        ImmutableArray<Problem> problems =
        [
            .. Written(fit.Plan, options, "Written to"),
            .. fit.Instead is { } instead ? Written(instead, besides, "With that change everything lies as written to") : [],
        ];
        if (stop.IsCancellationRequested)
            terminal.Out.WriteLine("Stopped early: this is the best found by then.");
        ProblemLines.Write(terminal.Error, problems);
        return fit.IsComplete && problems.IsEmpty ? ExitCode.Planned : ExitCode.Problems;

        ImmutableArray<Problem> Written(Plan plan, LayOptions where, string words)
        {
            WrittenFiles written = doors.WriteFiles(plan with { Notes = [.. notes, .. plan.Notes] }, where);
            if (options.Talk == Talk.Full && written.Names.Length > 0)
                terminal.Out.WriteLine($"{words} {written.Folder}: {string.Join(", ", written.Names)}");
            return written.Problems;
        }
    }
}
