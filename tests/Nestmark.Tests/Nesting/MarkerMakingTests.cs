using CsCheck;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Nesting.Search;
using Nestmark.Nesting.Verification;

namespace Nestmark.Tests.Nesting;

public sealed class MarkerMakingTests
{
    [Fact]
    public void Random_jobs_give_markers_that_the_judge_accepts() =>
        Tasks.Random.Check(200,
            task =>
            {
                Marker marker = MarkerMaking.Make(task, Tasks.Steps(60));
                Assert.Empty(MarkerVerifier.Violations(task, marker));
                Assert.Empty(MarkerJudge.Faults(task, marker));
            });

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void The_same_seed_steps_and_threads_give_the_same_marker(int threads)
    {
        LayTask task = Sample();
        Marker first = MarkerMaking.Make(task, Tasks.Steps(400, threads, seed: 7));
        Marker second = MarkerMaking.Make(task, Tasks.Steps(400, threads, seed: 7));
        Assert.Equal(first.Placements.Select(placement => (placement.Turn, placement.Offset)), second.Placements.Select(placement => (placement.Turn, placement.Offset)));
        Assert.Empty(MarkerJudge.Faults(task, first));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Beginning_anew_loses_nothing_and_gives_the_same_marker_again(int threads)
    {
        LayTask task = Sample();
        SearchTuning impatient = SearchTuning.Default with { LeastRun = 1, RunPatience = 0.1 };
        List<Length> lengths = [];
        SearchSettings settings = Tasks.Steps(3000, threads, seed: 7) with { Effort = new SearchEffort(), Report = news => lengths.Add(news.BestLayLength) };
        Marker first = MarkerMaking.Make(task, settings, impatient);
        Marker second = MarkerMaking.Make(task, Tasks.Steps(3000, threads, seed: 7), impatient);
        Assert.True(settings.Effort.Runs >= 4 * threads, $"{settings.Effort.Runs} runs");
        Assert.Equal(first.Placements.Select(placement => (placement.Turn, placement.Offset)), second.Placements.Select(placement => (placement.Turn, placement.Offset)));
        // The lay may end a few micrometers before its reported end, never behind it.
        Assert.True(first.LayLength <= lengths.Min(), $"{first.LayLength} at the end, {lengths.Min()} reported");
        Assert.Empty(MarkerJudge.Faults(task, first));
    }

    [Fact]
    public void More_steps_shorten_the_lay()
    {
        LayTask task = Sample();
        Length greedy = MarkerMaking.Make(task, Tasks.Steps(0)).LayLength;
        Length searched = MarkerMaking.Make(task, Tasks.Steps(4000)).LayLength;
        Assert.True(searched < greedy, $"{searched} after the search, {greedy} before");
    }

    // 1.0000000000000002 is what rounding can make of the end of the last stage.
    [Fact]
    public void A_stage_ends_when_all_is_spent_whatever_rounding_made_of_its_end()
    {
        Allowance allowance = new(new StepStop(3), CancellationToken.None);
        allowance.RunUntil(Math.BitIncrement(1.0));
        for (int i = 0; i < 3; i++)
        {
            Assert.False(allowance.IsSpent);
            allowance.Step();
        }
        Assert.True(allowance.IsSpent);
    }

    [Fact]
    public void News_tell_of_ever_shorter_lays()
    {
        List<Length> lengths = [];
        MarkerMaking.Make(Sample(), new SearchSettings(1, 2, new StepStop(1500), news => lengths.Add(news.BestLayLength), CancellationToken.None));
        Assert.True(lengths.Count > 1);
        Assert.Equal(lengths.OrderDescending(), lengths);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(20)]
    public void A_search_cancelled_after_some_news_keeps_a_sound_marker(int news)
    {
        LayTask task = Sample();
        using CancellationTokenSource source = new();
        int count = 0;
        void Count(SearchProgress _)
        {
            if (count++ >= news)
                source.Cancel();
        }
        Marker marker = MarkerMaking.Make(task, new SearchSettings(1, 2, new StepStop(3000), Count, source.Token));
        Assert.Empty(MarkerVerifier.Violations(task, marker));
        Assert.Empty(MarkerJudge.Faults(task, marker));
    }

    [Fact]
    public void Nothing_to_place_gives_an_empty_marker()
    {
        Marker marker = MarkerMaking.Make(Tasks.Open(100, []), Tasks.Steps(10));
        Assert.Equal(Length.Zero, marker.LayLength);
        Assert.Empty(marker.Placements);
    }

    [Fact]
    public void A_piece_deeper_than_the_lay_is_the_callers_mistake()
    {
        LayTask task = Tasks.Open(50, Tasks.Demands(Tasks.PieceOf("tall", Shapes.Of("0 0, 10 0, 10 60, 0 60")), 1, Turn.None));
        Assert.Throws<ArgumentException>(() => MarkerMaking.Make(task, Tasks.Steps(0)));
    }

    // Eight squares of 49 mm on cloth 100 mm deep need 196 mm by plain arithmetic, and whole steps bring them into contact.
    [Fact]
    public void Squares_fill_the_cloth_exactly()
    {
        LayTask task = Tasks.Open(100, Tasks.Demands(Tasks.PieceOf("square", Shapes.Of("0 0, 49 0, 49 49, 0 49")), 8, Turn.None));
        Marker marker = MarkerMaking.Make(task, Tasks.Steps(2000));
        Assert.Equal(196, marker.LayLength.TotalMillimeters);
    }

    private static LayTask Sample() => Tasks.Open(200, [
        .. Tasks.Demands(Tasks.PieceOf("wedge", Shapes.Of("0 0, 90 10, 70 60, 10 50")), 4, Turn.None, Turn.By(Angle.Half)),
        .. Tasks.Demands(Tasks.PieceOf("hook", Shapes.Of("0 0, 80 0, 80 20, 30 20, 30 70, 0 70")), 4, Turn.None, Turn.By(Angle.Half)),
        .. Tasks.Demands(Tasks.PieceOf("leaf", Shapes.Of("0 0, 40 -15, 90 0, 40 25")), 5, Turn.None, Turn.By(Angle.Half)),
    ]);
}
