using System.Collections.Immutable;
using Nestmark.Cli;
using Nestmark.Cloths;
using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Cli;

/// <summary>Runs the program in this process, on a job in memory.</summary>
internal sealed class CliRun
{
    /// <summary>The job that is read, whatever the path.</summary>
    public Job? Job { get; init; } = JobOf(TestCloths.Open, TestPieces.Rectangle("band", 500, 100, "1"));

    /// <summary>What reading it finds.</summary>
    public ImmutableArray<Problem> Problems { get; init; } = [];

    /// <summary>Why the files cannot be written.</summary>
    public ImmutableArray<Problem> WriteProblems { get; init; } = [];

    /// <summary>What stands in the way of writing, told before the search.</summary>
    public ImmutableArray<Problem> Obstacles { get; init; } = [];

    /// <summary>What the output leads to.</summary>
    public TerminalKind Kind { get; init; } = TerminalKind.Plain;

    /// <summary>The options of the last <c>lay</c> that got as far as writing.</summary>
    public LayOptions? Options { get; private set; }

    /// <summary>The options of the last <c>check</c> that got as far as writing.</summary>
    public CheckOptions? CheckOptions { get; private set; }

    /// <summary>The plan that was written.</summary>
    public Plan? Plan { get; private set; }

    /// <summary>What was printed as result.</summary>
    public string Out { get; private set; } = "";

    /// <summary>What was printed as error.</summary>
    public string Error { get; private set; } = "";

    /// <summary>A job of one garment without sizes, in metric units.</summary>
    public static Job JobOf(Cloth cloth, params Piece[] pieces) => new(
        "Harbour smock", "job.yaml", MeasureSystem.Metric,
        [.. pieces.Select(piece => new JobPiece(piece, cloth.Name, new Place("job.yaml", 4, 3, "pieces." + piece.Name)))],
        [cloth], [new SizeCount("", 1)]);

    /// <summary>Runs a command line, blanks between its words.</summary>
    public int Run(string commandLine, CancellationToken stop = default) =>
        Run(commandLine.Split(' ', StringSplitOptions.RemoveEmptyEntries), stop);

    /// <summary>Runs a command line of some words.</summary>
    public int Run(string[] words, CancellationToken stop)
    {
        using StringWriter results = new() { NewLine = "\n" };
        using StringWriter errors = new() { NewLine = "\n" };
        int code = CommandLine.Run(
            words, new Terminal(results, errors, Kind),
            new Doors(path => new JobReading(Problems.Any(problem => problem.Severity == Severity.Error) ? null : Job, Problems, [path]), (_, _) => Obstacles, Write) { WritePieces = WritePieces }, stop);
        Out = results.ToString();
        Error = errors.ToString();
        return code;
    }

    private WrittenFiles WritePieces(Job job, ImmutableArray<Problem> problems, CheckOptions options)
    {
        CheckOptions = options;
        return new WrittenFiles(options.Folder!, WriteProblems.IsEmpty ? ["pieces.pdf"] : [], WriteProblems);
    }

    private WrittenFiles Write(Plan plan, LayOptions options)
    {
        Options = options;
        Plan = plan;
        return new WrittenFiles(options.Folder, WriteProblems.IsEmpty ? ["guide.pdf", "marker.pdf", "marker.svg", "report.json"] : [], WriteProblems);
    }
}
