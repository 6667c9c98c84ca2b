using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Tests.Yardage.Charts;

/// <summary>Charts of rectangles, whose lays are plain.</summary>
public sealed class ChartMakingTests
{
    private static readonly Effort Quick = new(null, 50, 2, 1);
    private readonly List<ChartNews> _news = [];

    [Fact]
    public void Each_cell_is_one_garment_of_its_size_on_cloth_of_its_width()
    {
        Job job = JobOf(TestCloths.Open, [Panel("S", 500), Panel("M", 600), TestPieces.Rectangle("tie", 100, 70, "1")], "S", "M");
        Chart chart = Made(job, [1000, 1400], [Nap.None]);
        Assert.True(chart.IsComplete);
        Assert.Equal(
            ["S 1000 500", "S 1400 500", "M 1000 600", "M 1400 600"],
            chart.Entries.Select(entry => FormattableString.Invariant($"{entry.Cell.Size} {entry.Cell.Width.TotalMillimeters} {entry.Finding.LayLength.TotalMillimeters}")));
        Assert.Equal([1, 2, 3, 4], _news.Select(news => news.Done));
        Assert.All(_news, news => Assert.Equal(4, news.All));
    }

    [Fact]
    public void Lengths_are_rounded_up_by_the_shops_step_in_its_units_and_by_the_usual_one_in_the_others()
    {
        Cloth cloth = TestCloths.Open with { Buying = new BuyingRule(Length.FromCentimeters(25), null) };
        ChartEntry entry = Made(JobOf(cloth, [Panel("S", 910)], "S"), [1400], [Nap.None]).Entries.Single();
        Assert.Equal(Length.FromCentimeters(100), entry.Metric);

        // 910 mm is 0.995 yd, so 1 yd: the yards are not those of the meter that is bought.
        Assert.Equal(Length.FromYards(1), entry.Imperial);
    }

    [Fact]
    public void A_cell_that_cannot_be_cut_says_why_and_the_others_do_not_mind()
    {
        Chart chart = Made(JobOf(TestCloths.Open, [Panel("S", 500)], "S"), [800, 1400], [Nap.None]);
        Assert.Equal([false, true], chart.Entries.Select(entry => entry.CanBeCut));
        Assert.StartsWith("panel S is 90 cm deep, the cloth only 78 cm", chart.Entries[0].Finding.Unplaced.Single().Reason, StringComparison.Ordinal);
        Assert.Equal(Length.Zero, chart.Entries[0].Metric);
    }

    [Fact]
    public void A_width_without_room_between_the_selvages_is_an_answer_too()
    {
        Cloth cloth = TestCloths.Open with { Selvage = Length.FromCentimeters(4) };
        ChartEntry entry = Made(JobOf(cloth, [Panel("S", 500)], "S"), [70], [Nap.None]).Entries.Single();
        Assert.StartsWith("Between the selvages", entry.Finding.Unplaced.Single().Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_number_of_threads_does_not_change_the_chart()
    {
        Job job = JobOf(TestCloths.Folded, [TestPieces.Of("sleeve", "0 50, 300 0, 450 150, 300 300, 0 250", "2 pairs"), TestPieces.Rectangle("band", 210, 90, "3 pairs")], "S");
        Chart one = ChartMaking.Make(job, Request(job, [900, 1150, 1400], [Nap.OneWay, Nap.None]) with { Effort = Quick with { Threads = 1 } }, _ => null, _ => { }, CancellationToken.None);
        Chart four = ChartMaking.Make(job, Request(job, [900, 1150, 1400], [Nap.OneWay, Nap.None]) with { Effort = Quick with { Threads = 4 } }, _ => null, _ => { }, CancellationToken.None);
        Assert.Equal(one.Entries.Select(Text), four.Entries.Select(Text));
    }

    [Fact]
    public void Known_cells_are_not_searched_again()
    {
        Job job = JobOf(TestCloths.Open, [Panel("S", 500)], "S");
        ChartFinding known = new(Length.FromMillimeters(123), 0.5, []);
        Chart chart = ChartMaking.Make(
            job, Request(job, [900, 1400], [Nap.None]), cell => cell.Width == Length.FromMillimeters(900) ? known : null, _news.Add, CancellationToken.None);
        Assert.Equal(Length.FromMillimeters(1400), _news.Single().Cell.Width);
        Assert.Equal((2, 2), (_news.Single().Done, _news.Single().All));
        Assert.Equal(Length.FromMillimeters(123), chart.Entries[0].Finding.LayLength);
    }

    [Fact]
    public void Cells_that_were_not_searched_to_their_end_are_left_out_and_the_chart_says_so()
    {
        using CancellationTokenSource stop = new();
        Job job = JobOf(TestCloths.Open, [Panel("S", 500)], "S");
        ChartRequest request = Request(job, [1000, 1150, 1400], [Nap.None]) with { Effort = Quick with { Threads = 1 } };
        Chart chart = ChartMaking.Make(job, request, _ => null, _ => stop.Cancel(), stop.Token);
        Assert.False(chart.IsComplete);
        Assert.Single(chart.Entries);
    }

    [Fact]
    public void No_cell_needs_more_than_a_stricter_one()
    {
        Job job = JobOf(TestCloths.Open, [Panel("S", 500)], "S");
        ChartRequest request = Request(job, [1000, 1400], [Nap.OneWay, Nap.None]);
        Dictionary<string, double> lengths = new() { ["OneWay 1000"] = 700, ["OneWay 1400"] = 800, ["None 1000"] = 750, ["None 1400"] = 600 };
        Chart chart = ChartMaking.Make(job, request, cell => new ChartFinding(Length.FromMillimeters(lengths[Name(cell)]), 0.5, []), _ => { }, CancellationToken.None);
        Assert.Equal(
            ["OneWay 1000 700 as OneWay 1000", "OneWay 1400 700 as OneWay 1000", "None 1000 700 as OneWay 1000", "None 1400 600 as None 1400"],
            chart.Entries.Select(entry => FormattableString.Invariant($"{Name(entry.Cell)} {entry.Finding.LayLength.TotalMillimeters} as {Name(entry.LaidAs)}")));

        // The same pieces on the same length: as much smaller as the usable width is greater, 98 cm to 138 cm.
        Assert.Equal(0.5 * 980 / 1380, chart.Entries[1].Finding.EfficiencyRatio, 12);
    }

    [Fact]
    public void Keys_differ_by_all_that_a_finding_depends_on_and_not_by_threads()
    {
        ChartCell cell = new("shell", "S", Nap.None, Length.FromMillimeters(900));
        string key = ChartKeys.Of("digest", cell, Quick);
        Assert.Equal(key, ChartKeys.Of("digest", cell, Quick with { Threads = 7 }));
        string[] others =
        [
            ChartKeys.Of("other", cell, Quick), ChartKeys.Of("digest", cell with { Size = "M" }, Quick), ChartKeys.Of("digest", cell with { Nap = Nap.OneWay }, Quick),
            ChartKeys.Of("digest", cell with { Width = Length.FromMillimeters(901) }, Quick), ChartKeys.Of("digest", cell with { Cloth = "lining" }, Quick),
            ChartKeys.Of("digest", cell, Quick with { Steps = 51 }), ChartKeys.Of("digest", cell, Quick with { Seed = 2 }), ChartKeys.Of("digest", cell, Quick with { Steps = null, Seconds = 50 }),
        ];
        Assert.Equal(9, others.Append(key).Distinct().Count());
    }

    private static string Name(ChartCell cell) => FormattableString.Invariant($"{cell.Nap} {cell.Width.TotalMillimeters}");

    private static string Text(ChartEntry entry) => FormattableString.Invariant($"{Name(entry.Cell)} {entry.Finding.LayLength.Micrometers} {Name(entry.LaidAs)}");

    private static Piece Panel(string size, int length) =>
        TestPieces.Of("panel", FormattableString.Invariant($"0 0, {length} 0, {length} 900, 0 900"), "1", size: size);

    private static Job JobOf(Cloth cloth, ImmutableArray<Piece> pieces, params ImmutableArray<string> sizes) => new(
        "Panels", "job.yaml", MeasureSystem.Metric, [.. pieces.Select(piece => new JobPiece(piece, cloth.Name, new Place("job.yaml", 1, 1, "pieces." + piece.Name)))],
        [cloth], [.. sizes.Select(size => new SizeCount(size, 3))]);

    private static ChartRequest Request(Job job, double[] widths, Nap[] naps) => new(
        [job.Cloths[0].Name], [.. job.Sizes.Select(size => size.Size)], [.. widths.Select(Length.FromMillimeters)], [.. naps], Quick);

    private Chart Made(Job job, double[] widths, Nap[] naps) => ChartMaking.Make(job, Request(job, widths, naps), _ => null, _news.Add, CancellationToken.None);
}
