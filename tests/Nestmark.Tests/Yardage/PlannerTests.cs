using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

/// <summary>The planner around a search that lays everything end to end.</summary>
public sealed class PlannerTests
{
    private static readonly Place Where = new("job.yaml", 3, 1, "pieces.x");
    private readonly List<(LayTask Task, SearchSettings Settings)> _calls = [];

    [Fact]
    public void A_piece_without_a_size_is_cut_for_every_size_and_one_with_a_size_for_its_own()
    {
        Job job = JobOf(
            [TestPieces.Rectangle("tie", 900, 60, "2"), TestPieces.Of("front", "0 0, 500 0, 500 300, 0 300", "1", size: "M")],
            [TestCloths.Open], [new("S", 1), new("M", 2)]);
        Plan(job, new Effort(null, 10, 1, 1));
        Assert.Equal(
            ["tie S 1", "tie S 2", "tie M 1", "tie M 2", "tie M 3", "tie M 4", "front M 1", "front M 2"],
            _calls.Single().Task.Demands.Select(demand => $"{demand.Piece.Name} {demand.Size} {demand.Copy}"));
    }

    [Fact]
    public void Steps_are_shared_by_the_threads_rounded_up()
    {
        Plan(OneRectangle(), new Effort(null, 10, 4, 7));
        SearchSettings settings = _calls.Single().Settings;
        Assert.Equal((7, 4), (settings.Seed, settings.Threads));
        Assert.True(settings.Stop.SpentRatio(2) < 1);
        Assert.Equal(1, settings.Stop.SpentRatio(3));
    }

    // By hand: 2 layers of 100 x 100 against 1 layer of 100 x 300: 2 to 3, so the search of the first cloth is 2/5 of the whole.
    [Fact]
    public void Seconds_are_shared_out_by_the_area_to_cut()
    {
        Cloth lining = TestCloths.Open with { Name = "lining" };
        Job job = JobOf([TestPieces.Rectangle("a", 100, 100, "2")], [TestCloths.Folded, lining], [new("", 1)]);
        job = job with { Pieces = job.Pieces.Add(new JobPiece(TestPieces.Rectangle("b", 100, 300, "1"), "lining", Where)) };
        Plan(job, new Effort(1e5, null, 1, 1));
        double spentOfFirst = _calls[0].Settings.Stop.SpentRatio(0);
        Assert.All(_calls, call => Assert.IsType<ClockStop>(call.Settings.Stop));
        Assert.InRange(spentOfFirst, 0, 0.001);
        Assert.Equal([40_000.0, 60_000.0], _calls.Select(call => ((ClockStop)call.Settings.Stop).AllowedSeconds));
    }

    [Fact]
    public void Every_cloth_gets_a_plan_in_the_order_of_the_job()
    {
        Cloth idle = TestCloths.Open with { Name = "idle" };
        Job job = OneRectangle() with { Cloths = [idle, TestCloths.Open] };
        Plan plan = Plan(job, new Effort(null, 1, 1, 1));
        Assert.Equal(["idle", "shell"], plan.Cloths.Select(cloth => cloth.Cloth.Name));
        Assert.Equal(Length.Zero, plan.Cloths[0].Purchase.ToBuy);
        Assert.Equal("No piece is cut from idle.", plan.Notes.Single().What);
        Assert.True(plan.IsComplete);
    }

    [Fact]
    public void The_purchase_is_that_of_the_marker()
    {
        Plan plan = Plan(OneRectangle(), new Effort(null, 1, 1, 1));
        Assert.Equal(Length.FromMillimeters(500), plan.Cloths.Single().Marker.LayLength);
        Assert.Equal("50 cm", plan.Cloths.Single().Purchase.Text);
    }

    [Fact]
    public void What_cannot_lie_makes_the_plan_incomplete_and_gets_no_note_besides()
    {
        Job job = JobOf([TestPieces.Of("yoke", "0 0, 300 0, 280 200, 0 150", "1")], [TestCloths.Folded], [new("", 1)]);
        Plan plan = Plan(job, new Effort(null, 1, 1, 1));
        Assert.False(plan.IsComplete);
        Assert.Empty(plan.Notes);
        Assert.Empty(_calls);
    }

    [Fact]
    public void Notes_stand_where_the_piece_is_described()
    {
        Job job = JobOf([TestPieces.Of("pocket", "0 0, 300 0, 280 200, 0 150", "2")], [TestCloths.Folded], [new("", 1)]);
        Problem note = Plan(job, new Effort(null, 1, 1, 1)).Notes.Single();
        Assert.Equal((Severity.Note, Where), (note.Severity, note.Where));
    }

    [Fact]
    public void News_carries_the_name_of_the_cloth()
    {
        List<string> news = [];
        Planner.Make(OneRectangle(), new Effort(null, 1, 1, 1), (cloth, progress) => news.Add($"{cloth} {progress.BestLayLength}"), EndToEnd, default);
        Assert.Equal(["shell 500 mm"], news);
    }

    [Theory]
    [InlineData(null, null, 1)]
    [InlineData(1.0, 5L, 1)]
    [InlineData(1.0, null, 0)]
    public void An_effort_that_means_nothing_is_the_callers_mistake(double? seconds, long? steps, int threads) =>
        Assert.Throws<ArgumentException>(() => Plan(OneRectangle(), new Effort(seconds, steps, threads, 1)));

    private static Job OneRectangle() => JobOf([TestPieces.Rectangle("band", 500, 100, "1")], [TestCloths.Open], [new("", 1)]);

    private static Job JobOf(Piece[] pieces, Cloth[] cloths, SizeCount[] sizes) => new(
        "Test", "job.yaml", MeasureSystem.Metric,
        [.. pieces.Select(piece => new JobPiece(piece, cloths[0].Name, Where))], [.. cloths], [.. sizes]);

    private Plan Plan(Job job, Effort effort) => Planner.Make(job, effort, (_, _) => { }, EndToEnd, default);

    private Marker EndToEnd(LayTask task, SearchSettings settings)
    {
        _calls.Add((task, settings));
        ImmutableArray<Placement>.Builder placements = ImmutableArray.CreateBuilder<Placement>();
        long end = 0;
        foreach (Demand demand in task.Demands)
        {
            Box box = demand.Turns[0].Apply(demand.Piece.CuttingLine).Bounds;
            placements.Add(new(demand.Piece, demand.Size, demand.Copy, demand.Layers, demand.Contact, demand.Turns[0], new(end - box.MinX, -box.MinY)));
            end += box.Width;
        }
        settings.Report(new SearchProgress(Length.FromMicrometers(end), 0));
        return new Marker(task.Surface, Length.FromMicrometers(end), placements.ToImmutable(), task.Impossible);
    }
}
