using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Cli;

/// <summary><c>nestmark chart JOB</c>: cloth required over sizes, widths and nap.</summary>
internal static class ChartCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "chart";

    // 9 sizes, 4 widths and 2 naps on 2 cores: 72 cells of 4 s make 144 s.
    private const double UsualSeconds = 4;

    private static readonly (string Word, ImmutableArray<Nap> Naps)[] NapWords =
        [("both", [Nap.OneWay, Nap.None]), ("with", [Nap.OneWay]), ("without", [Nap.None])];

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors, CancellationToken stop)
    {
        Argument<string> job = new("JOB") { Description = "The job file." };
        Option<ImmutableArray<Length>?> widths = WidthsOption();
        Option<ImmutableArray<Nap>?> naps = NapOption();
        Option<string> sizes = new("--sizes") { Description = "each, or some sizes of the job, as S,M,L.", HelpName = "LIST", DefaultValueFactory = _ => "each" };
        Option<string?> cloth = new("--cloth") { Description = "A cloth of the job by name, or all. [default: the first]", HelpName = "NAME" };
        Option<string> folder = CommonOptions.Folder();
        Option<double?> seconds = CommonOptions.Seconds("How long to search each cell, on one thread. [default: 4]");
        Option<long?> steps = CommonOptions.Steps("Search each cell by steps instead: the same on every run.");
        Option<long?> threads = CommonOptions.Threads("Cells to search at the same time. [default: the machine's cores, at most 4]");
        Option<long?> seed = CommonOptions.Seed();
        Option<bool> force = CommonOptions.Force();
        Option<bool> quiet = new("--quiet") { Description = "Print only the table and what is wrong." };
        Command command = new(Name, "Make a chart: cloth required for each size, width and nap. Goes on where an earlier run was stopped.")
        {
            job, widths, naps, sizes, cloth, folder, seconds, steps, threads, seed, force, quiet,
        };
        CommonOptions.RefuseBoth(command, seconds, steps);
        command.SetAction(parsed => (int)Run(OptionsOf(parsed), terminal, doors, stop));
        return command;

        ChartOptions OptionsOf(ParseResult parsed) => new(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(folder), parsed.GetValue(cloth) ?? "", SizesOf(parsed.GetRequiredValue(sizes)),
            parsed.GetValue(widths) ?? [], parsed.GetValue(naps) ?? NapWords[0].Naps,
            CommonOptions.EffortOf(UsualSeconds, parsed.GetValue(seconds), parsed.GetValue(steps), parsed.GetValue(threads), parsed.GetValue(seed)),
            parsed.GetValue(force) ? Replacing.AnyFile : Replacing.OwnFiles,
            parsed.GetValue(quiet) ? Talk.Quiet : Talk.Full);
    }

    /// <summary>Reads the job, searches the cells that are not known yet, writes the files and prints the table.</summary>
    public static ExitCode Run(ChartOptions options, Terminal terminal, Doors doors, CancellationToken stop)
    {
        JobReading reading = doors.ReadJob(options.JobFile);
        if (reading.Job is not { } job)
        {
            ProblemLines.Write(terminal.Error, reading.Problems);
            return ExitCodes.Of([], reading.Problems, null);
        }
        (ChartRequest? request, ImmutableArray<string> faults) = ChartRequests.Of(job, options);
        ImmutableArray<Problem> obstacles = request is null ? [] : doors.Chart.FindObstacles(job, options);
        if (request is null || !obstacles.IsEmpty)
        {
            foreach (string fault in faults)
                terminal.Error.WriteLine(fault);
            ProblemLines.Write(terminal.Error, obstacles);
            return ExitCodes.Of(faults, obstacles, null);
        }
        ChartCellsFile cells = doors.Chart.OpenCells(job, options);
        Chart chart = Made(job, request, reading.Digest, cells, terminal, options.Talk, stop);
        if (!chart.IsComplete)
        {
            terminal.Out.WriteLine(FormattableString.Invariant(
                $"Stopped early: {chart.Entries.Length} of {ChartMaking.Cells(request).Length} cells are found and kept in {options.Folder}. The same command goes on from there."));
            return ExitCodes.OfChart(chart, cells.Problem is { } lost ? [lost] : []);
        }
        WrittenFiles written = doors.Chart.WriteFiles(chart, options);
        terminal.Out.WriteLine();
        terminal.Out.Write(ChartText.Of(chart).ReplaceLineEndings(terminal.Out.NewLine));
        if (options.Talk == Talk.Full && written.Names.Length > 0)
            terminal.Out.WriteLine($"Written to {written.Folder}: {string.Join(", ", written.Names)}");
        ImmutableArray<Problem> problems = cells.Problem is { } problem ? [problem, .. written.Problems] : written.Problems;
        ProblemLines.Write(terminal.Error, problems);
        return ExitCodes.OfChart(chart, problems);
    }

    private static Chart Made(Job job, ChartRequest request, string digest, ChartCellsFile cells, Terminal terminal, Talk talk, CancellationToken stop)
    {
        using ChartProgress progress = new(terminal, job.System);
        int known = ChartMaking.Cells(request).Count(cell => cells.Find(KeyOf(cell)) is not null);
        if (known > 0 && talk == Talk.Full)
            terminal.Out.WriteLine(FormattableString.Invariant($"{known} cells are known from an earlier run."));
        return ChartMaking.Make(job, request, cell => cells.Find(KeyOf(cell)), Found, stop);

        string KeyOf(ChartCell cell) => ChartKeys.Of(digest, cell, request.Effort);

        void Found(ChartNews news)
        {
            cells.Add(KeyOf(news.Cell), news.Finding);
            if (talk == Talk.Full)
                progress.Report(news);
        }
    }

    private static ImmutableArray<string> SizesOf(string text) =>
        text == "each" ? [] : [.. text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct()];

    private static Option<ImmutableArray<Length>?> WidthsOption() => new("--widths")
    {
        Description = "Widths of cloth with commas between. [default: 90cm,115cm,140cm,150cm, or 36in,45in,54in,60in for jobs in inches]",
        HelpName = "LIST",
        CustomParser = result =>
        {
            WidthsReading reading = WidthList.Read(result.Tokens[0].Value);
            if (reading.Message.Length > 0)
                result.AddError(reading.Message);
            return reading.Widths;
        },
    };

    private static Option<ImmutableArray<Nap>?> NapOption() => new("--nap")
    {
        Description = "with (all pieces one way), without, or both. [default: both]",
        HelpName = "WORD",
        CustomParser = result =>
        {
            string text = result.Tokens[0].Value;
            foreach ((string word, ImmutableArray<Nap> naps) in NapWords)
            {
                if (word == text)
                    return naps;
            }
            result.AddError($"'{text}' is not what --nap takes: both, with or without.");
            return null;
        },
    };
}
