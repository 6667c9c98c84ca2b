using Nestmark.Cli;
using Nestmark.Cloths;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Pieces;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Tests.Cli;

public sealed class ChartCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("nestmark-chart-").FullName;
    private Chart? _chart;
    private ChartOptions? _options;
    private string _out = "";
    private string _error = "";

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Without_options_it_shows_every_size_of_the_first_cloth_at_the_usual_widths_with_and_without_nap()
    {
        Assert.Equal(0, Run("chart job.yaml --steps 1"));
        Assert.Equal("shell", Assert.Single(_chart!.Request.Cloths));
        Assert.Equal(["S", "M"], _chart.Request.Sizes.AsEnumerable());
        Assert.Equal([900, 1150, 1400, 1500], _chart.Request.Widths.Select(width => width.TotalMillimeters));
        Assert.Equal([Nap.OneWay, Nap.None], _chart.Request.Naps.AsEnumerable());
        Assert.Equal(("out", Replacing.OwnFiles, Talk.Full), (_options!.Folder, _options.Replacing, _options.Talk));
        Assert.Contains("16 of 16: shell, ", _out, StringComparison.Ordinal);
        Assert.EndsWith("Written to out: chart.pdf\n", _out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_effort_a_cell_is_searched_for_four_seconds()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Run("chart job.yaml", stop: stop.Token);
        Assert.Null(_chart);
        Assert.Equal(new Effort(4, null, Math.Min(Environment.ProcessorCount, 4), 1), ChartEffort);
    }

    [Fact]
    public void Options_become_the_request()
    {
        Run("chart job.yaml --widths 45in,60in --nap with --sizes M --cloth lining --out there --steps 2 --threads 3 --seed 9 --force --quiet");
        Assert.Equal([1143, 1524], _chart!.Request.Widths.Select(width => width.TotalMillimeters));
        Assert.Equal((Nap.OneWay, "M", "lining"), (_chart.Request.Naps.Single(), _chart.Request.Sizes.Single(), _chart.Request.Cloths.Single()));
        Assert.Equal(new Effort(null, 2, 3, 9), _chart.Request.Effort);
        Assert.Equal(("there", Replacing.AnyFile, Talk.Quiet), (_options!.Folder, _options.Replacing, _options.Talk));
        Assert.DoesNotContain(" of 2:", _out, StringComparison.Ordinal);
    }

    [Fact]
    public void All_cloths_that_something_is_cut_from_can_be_had_at_once()
    {
        Run("chart job.yaml --cloth all --steps 1 --widths 140cm");
        Assert.Equal(["shell", "lining"], _chart!.Request.Cloths.AsEnumerable());
    }

    [Theory]
    [InlineData("--sizes XL", "There is no size 'XL' in this job; there are: S, M.\n")]
    [InlineData("--cloth silk", "There is no cloth 'silk' in this job; there are: shell, lining, idle.\n")]
    public void A_size_or_cloth_that_the_job_lacks_is_a_wrong_command_line(string option, string told)
    {
        Assert.Equal(2, Run("chart job.yaml " + option));
        Assert.Equal(told, _error);
    }

    [Theory]
    [InlineData("--widths 140")]
    [InlineData("--nap sideways")]
    [InlineData("--seconds 1 --steps 1")]
    public void A_wrong_option_ends_with_2_and_the_usage(string option)
    {
        Assert.Equal(2, Run("chart job.yaml " + option));
        Assert.Contains("Usage: nestmark chart JOB", _error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_interrupted_chart_keeps_its_cells_and_goes_on_from_there()
    {
        using CancellationTokenSource stop = new();
        Assert.Equal(1, Run("chart job.yaml --steps 1 --threads 1", cell => stop.Cancel(), stop.Token));
        Assert.Null(_chart);
        Assert.Contains("Stopped early: 1 of 16 cells are found and kept in out.", _out, StringComparison.Ordinal);
        Assert.Equal(0, Run("chart job.yaml --steps 1 --threads 1"));
        Assert.StartsWith("1 cells are known from an earlier run.\n2 of 16: ", _out, StringComparison.Ordinal);
        Assert.True(_chart!.IsComplete);
    }

    [Fact]
    public void A_chart_in_which_nothing_can_be_cut_ends_with_1_and_says_why()
    {
        Assert.Equal(1, Run("chart job.yaml --steps 1 --widths 20cm"));
        Assert.Contains("(1) panel S is 60 cm deep, the cloth only 18 cm", _out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_help_reads_as_accepted()
    {
        Run("chart --help");
        Approve.Text("help-chart.txt", _out);
    }

    private Effort? ChartEffort { get; set; }

    private int Run(string commandLine, Action<string>? onCell = null, CancellationToken stop = default)
    {
        using StringWriter results = new() { NewLine = "\n" };
        using StringWriter errors = new() { NewLine = "\n" };
        TextWriter output = onCell is null ? results : new WatchedWriter(results, onCell);
        Doors doors = new(path => new JobReading(JobOfTwoSizes(), [], [path]) { Digest = "digest" }, (_, _) => [], (_, _) => throw new InvalidOperationException())
        {
            Chart = new ChartDoors((_, _) => [], Opened, Written),
        };
        int code = CommandLine.Run(commandLine.Split(' '), new Terminal(output, errors, TerminalKind.Plain), doors, stop);
        (_out, _error) = (results.ToString(), errors.ToString());
        return code;
    }

    private ChartCellsFile Opened(Job job, ChartOptions options)
    {
        ChartEffort = options.Effort;
        return ChartCellsFile.Open(_folder, JobOrigin.Of(job));
    }

    private WrittenFiles Written(Chart chart, ChartOptions options)
    {
        (_chart, _options) = (chart, options);
        return new WrittenFiles(options.Folder, ["chart.pdf"], []);
    }

    private static Job JobOfTwoSizes()
    {
        Cloth[] cloths = [TestCloths.Open, TestCloths.Open with { Name = "lining" }, TestCloths.Open with { Name = "idle" }];
        Piece small = TestPieces.Of("panel", "0 0, 500 0, 500 600, 0 600", "1", size: "S");
        Piece medium = TestPieces.Of("panel", "0 0, 550 0, 550 650, 0 650", "1", size: "M");
        Place where = new("job.yaml", 4, 3, "pieces.panel");
        return new Job(
            "Panel", "job.yaml", MeasureSystem.Metric,
            [new JobPiece(small, "shell", where), new JobPiece(medium, "shell", where), new JobPiece(medium, "lining", where)],
            [.. cloths], [new SizeCount("S", 1), new SizeCount("M", 2)]);
    }

    private sealed class WatchedWriter(StringWriter inner, Action<string> seen) : TextWriter
    {
        public override System.Text.Encoding Encoding => inner.Encoding;

        public override void Write(char value) => inner.Write(value);

        public override void WriteLine(string? value)
        {
            inner.WriteLine(value);
            if (value?.Contains(" of 16: ", StringComparison.Ordinal) == true)
                seen(value);
        }
    }
}
