using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage.Leftovers;

/// <summary>The verdict on leftovers, on the fixtures.</summary>
public sealed class FitPlannerTests
{
    private static readonly Effort Quick = new(null, 2_000, 1, 1);

    [Fact]
    public void Two_sleeves_come_out_of_an_L_shaped_leftover()
    {
        FitPlan fit = Fit("leftovers/l-shape.yaml");
        Assert.True(fit.IsComplete);
        Assert.Equal(["shell: yes, everything comes out of the leftovers.", "  from corner: sleeve (2 times)"], FitSentences.Of(fit));
    }

    [Fact]
    public void One_side_a_centimeter_shorter_is_too_short_and_the_verdict_says_so_without_claiming_a_proof()
    {
        FitPlan fit = Fit("leftovers/l-shape-too-short.yaml");
        Assert.Equal("sleeve", Assert.Single(fit.Cloths[0].Missing).Title);
        Assert.Contains("that is no proof that there is none", fit.Cloths[0].Missing[0].Reason, StringComparison.Ordinal);
        Assert.Contains(fit.Cloths[0].Helps, help => help.EndsWith("longer across the grain.", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_missing_is_told_with_what_would_do()
    {
        FitPlan fit = Fit("leftovers/several.yaml");
        string[] lines = [.. FitSentences.Of(fit)];
        Assert.False(fit.IsComplete);

        // By hand: the facing is 60 + 2 x 1 cm long and 6 + 2 x 1 cm wide; the longest leftover is 50 cm.
        Assert.Contains("  missing: facing: it is 62 cm along the grain and 8 cm across it, and no leftover has room for it even alone.", lines);
        Assert.Contains("  62 cm more of shell, 140 cm wide and laid open, would do for what is missing: buy 70 cm (7/8 yd).", lines);
        Assert.Contains("  Everything fits with a seam across facing, cut in two with 1 cm on both joined edges.", lines);
    }

    [Fact]
    public void Leftovers_first_buys_only_the_rest()
    {
        Plan plan = FitPlanner.LeftoversFirst(Read("leftovers/several.yaml"), Quick, (_, _) => { }, default);
        Assert.Equal(["leftovers", "open"], plan.Cloths.Select(cloth => LayWords.Of(cloth.Marker.Surface.Form)));
        Assert.Equal("facing", Assert.Single(plan.Cloths[1].Marker.Placements).Piece.Name);
        Assert.Equal("70 cm", plan.Cloths[1].Purchase.Text);
        Assert.True(plan.IsComplete);
    }

    [Fact]
    public void Without_leftovers_there_is_nothing_to_fit() =>
        Assert.Equal("The job lists no leftovers.", Assert.Single(FitPlanner.Obstacles(Read("harbour-smock/job.yaml"))).What);

    private static FitPlan Fit(string fixture) => FitPlanner.Make(Read(fixture), Quick, default);

    private static Job Read(string fixture) => JobReader.Read(Fixtures.PathOf(fixture), new DiskFiles()).Job!;
}
