using Nestmark.Cli;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Tests.Cli;

public sealed class LayCommandTests
{
    private static readonly Problem Fault = new(Severity.Error, new Place("job.yaml", 7, 5, "cloths.shell.width"), "'wide' is no length.", "Write a number with a unit, as 140 cm.");

    [Fact]
    public void Without_options_it_searches_ten_seconds_with_seed_1_and_writes_to_out()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Open) };
        Assert.Equal(0, run.Run("lay job.yaml"));
        Assert.Equal(
            new LayOptions("job.yaml", "out", new Effort(10, null, Math.Min(Environment.ProcessorCount, 4), 1), null, Replacing.OwnFiles, Talk.Full),
            run.Options);
    }

    [Fact]
    public void Options_become_settings()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Open) };
        run.Run("lay job.yaml --out there --steps 2000 --threads 2 --seed -7 --paper a0 --force --quiet");
        Assert.Equal(
            new LayOptions("job.yaml", "there", new Effort(null, 2000, 2, -7), Paper.Read("a0").Paper, Replacing.AnyFile, Talk.Quiet),
            run.Options);
    }

    [Fact]
    public void Advice_is_given_when_it_is_asked_for()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Open, TestPieces.Rectangle("panel", 500, 900, "2")) };
        run.Run("lay job.yaml --steps 20");
        Assert.Null(run.Plan!.Savings);
        Assert.DoesNotContain("to save", run.Out, StringComparison.Ordinal);
        Assert.Equal(0, run.Run("lay job.yaml --steps 20 --advise --threads 2"));
        Assert.Equal((Advising.Asked, 20), (run.Options!.Advising, run.Plan!.Effort.Steps));
        Assert.Contains("to save: Nothing that was tried needs less cloth to buy (", run.Out, StringComparison.Ordinal);
        Assert.Contains("shell: cloth 150 cm wide", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_of_several_cloths_ends_its_list_with_the_sum()
    {
        Cloth priced = TestCloths.Open with { Buying = new BuyingRule(Length.FromCentimeters(10), new ClothPrice(20m, Length.FromMeters(1), "EUR")) };
        Job job = CliRun.JobOf(priced, TestPieces.Rectangle("panel", 500, 900, "1"));
        job = job with { Cloths = [priced, priced with { Name = "lining" }], Pieces = [.. job.Pieces, job.Pieces[0] with { Cloth = "lining" }] };
        CliRun run = new() { Job = job };
        run.Run("lay job.yaml --steps 1 --quiet");
        Assert.EndsWith("shopping list: 20.00 EUR in all\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_with_errors_is_not_planned()
    {
        CliRun run = new() { Problems = [Fault] };
        Assert.Equal(1, run.Run("lay job.yaml"));
        Assert.Null(run.Plan);
        Assert.Equal("job.yaml:7:5 (cloths.shell.width): 'wide' is no length. Write a number with a unit, as 140 cm.\n", run.Error);
    }

    [Fact]
    public void A_single_piece_on_folded_cloth_is_reported_and_ends_with_1()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Folded, TestPieces.Rectangle("yoke", 400, 200, "1")) };
        Assert.Equal(1, run.Run("lay job.yaml --steps 1"));
        Assert.Contains("shell: nothing to buy\n  not placed: yoke is cut once, and on folded cloth", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_that_cannot_be_written_end_with_1()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Open), WriteProblems = [new Problem(Severity.Error, new Place("out", 0, 0, ""), "The folder is full.", "")] };
        Assert.Equal(1, run.Run("lay job.yaml"));
        Assert.Equal("out: The folder is full.\n", run.Error);
        Assert.DoesNotContain("Written", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_written_to_is_told_before_the_search()
    {
        CliRun run = new() { Obstacles = [new Problem(Severity.Error, new Place("out/guide.pdf", 0, 0, ""), "A file of this name exists.", "Choose another folder.")] };
        Assert.Equal(1, run.Run("lay job.yaml --seconds 600"));
        Assert.Null(run.Plan);
        Assert.Equal("", run.Out);
        Assert.Equal("out/guide.pdf: A file of this name exists. Choose another folder.\n", run.Error);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void An_empty_name_of_a_folder_is_a_wrong_command_line(string folder)
    {
        CliRun run = new();
        Assert.Equal(2, run.Run(["lay", "job.yaml", "--out", folder], CancellationToken.None));
        Assert.StartsWith("--out takes the name of a folder, and it is empty.\nUsage: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_on_a_drawing_names_its_place_and_one_on_the_job_does_not()
    {
        Problem drawn = new(Severity.Note, new Place("garments/smock.svg", 12, 5, "#front"), "The outline had a gap.", "Join the ends.");
        Problem written = new(Severity.Note, new Place("garments/job.yaml", 4, 3, "pieces.band"), "band is narrow.", "");
        CliRun run = new() { Problems = [drawn, written] };
        run.Run("lay job.yaml --steps 1");
        Assert.Contains("note: smock.svg:12:5 (#front): The outline had a gap. Join the ends.\nnote: band is narrow.\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_of_reading_go_into_the_plan_and_do_not_change_the_exit_code()
    {
        Problem note = Fault with { Severity = Severity.Note };
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Open), Problems = [note] };
        Assert.Equal(0, run.Run("lay job.yaml"));
        Assert.Equal(note, run.Plan!.Notes[0]);
    }

    [Fact]
    public void A_search_that_is_stopped_keeps_its_marker_and_says_so()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        CliRun run = new();
        Assert.Equal(0, run.Run("lay job.yaml --seconds 600", stop.Token));
        Assert.Equal(Length.FromMillimeters(500), run.Plan!.Cloths.Single().Marker.LayLength);
        Assert.EndsWith("Stopped early: this is the best marker found by then.\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_summary_reads_as_accepted()
    {
        Cloth cloth = TestCloths.Folded with
        {
            Nap = Nap.OneWay,
            Ends = Length.FromCentimeters(2),
            Buying = new BuyingRule(Length.FromCentimeters(10), new ClothPrice(18.50m, Length.FromMeters(1), "EUR")),
        };
        Approve.Text("lay-summary.txt", Summary(cloth, Talk.Full));
    }

    [Fact]
    public void The_quiet_summary_is_one_line_a_cloth() =>
        Assert.Equal("shell: buy 60 cm (3/4 yd) of cloth 140 cm wide\n", Summary(TestCloths.Folded, Talk.Quiet));

    private static string Summary(Cloth cloth, Talk talk)
    {
        Job job = CliRun.JobOf(cloth, TestPieces.Rectangle("front", 520, 300, "1 on fold"));
        LayTask task = LayRules.TaskFor(cloth, [new(job.Pieces[0].Piece, "", 1)]);
        Demand demand = task.Demands.Single();
        Marker marker = new(
            task.Surface, Length.FromMillimeters(520),
            [new(demand.Piece, "", 1, demand.Layers, demand.Contact, demand.Turns[0], Point.Origin)], []);
        Purchase purchase = Purchasing.For(cloth, marker.LayLength, MeasureSystem.Metric);
        Problem note = new(Severity.Note, new Place("job.yaml", 2, 1, ""), "A thing was mended.", "Look at it.");
        Plan plan = new(job, new Effort(1, null, 1, 1), [new ClothPlan(cloth, marker, purchase)], [note]);
        using StringWriter writer = new() { NewLine = "\n" };
        LaySummary.Write(writer, plan, new WrittenFiles("out", ["guide.pdf", "marker.pdf", "marker.svg", "report.json"], []), talk);
        return writer.ToString();
    }
}
