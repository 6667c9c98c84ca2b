using Nestmark.Input;
using Nestmark.Nesting;
using Nestmark.Tests.Input;
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
        Assert.StartsWith("sleeve: it fits alone", Assert.Single(fit.Plan.Cloths[0].Marker.Unplaced).Reason, StringComparison.Ordinal);
        Assert.Contains(fit.Cloths[0].Helps, help => help.Sentence.EndsWith("longer across the grain.", StringComparison.Ordinal));
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

    // By hand: 48 cm, 1.12 cm of point at the head and 2 cm of hem are 51.12 cm along the grain; with 4 cm of hem 53.12 cm. The leftover is 51.5 cm long.
    [Fact]
    public void A_hem_that_may_be_narrower_makes_the_sleeves_come_out_and_the_seams_stay()
    {
        FitPlan fit = Fit("leftovers/narrower-hem.yaml");
        Assert.False(fit.IsComplete);
        FitHelp help = Assert.Single(fit.Cloths[0].Helps, one => one.Layout is not null);
        Assert.Equal("Everything fits with D-E of sleeve at 2 cm instead of 4 cm.", help.Sentence);
        Placement[] placed = [.. fit.Instead!.Cloths[0].Marker.Placements];
        Assert.Equal(2, placed.Length);
        Assert.All(placed, placement => Assert.InRange(placement.CuttingLine.Bounds.Width, 511_000, 511_300));
        Assert.All(placed, placement => Assert.True(RemnantTable.HasRoomFor(fit.Instead.Cloths[0].Leftovers!.Under(placement), placement.CuttingLine)));
        Assert.Contains(fit.Instead.Notes, note => note.What == help.Sentence);
    }

    // The leftover is 51.5 cm long: a hem of 2.5 cm needs 51.62 cm.
    [Fact]
    public void A_hem_is_never_narrower_than_its_least()
    {
        FitPlan fit = FitPlanner.Make(ReadText("leftovers/narrower-hem.yaml", "least: { D-E: 2, seam: 0.7 }", "least: { D-E: 2.5 }"), Quick, default);
        Assert.Null(fit.Instead);
        Assert.DoesNotContain(fit.Cloths[0].Helps, help => help.Layout is not null);
    }

    [Fact]
    public void Without_a_least_allowance_no_hem_is_touched()
    {
        FitPlan fit = FitPlanner.Make(ReadText("leftovers/narrower-hem.yaml", ", least: { D-E: 2, seam: 0.7 }", ""), Quick, default);
        Assert.Null(fit.Instead);
        Assert.DoesNotContain(fit.Cloths[0].Helps, help => help.Sentence.Contains("instead of", StringComparison.Ordinal));
    }

    // By hand: half of 56 cm and 1 cm are 29 cm, and the leftover is 28.6 cm long; with seams of 0.5 cm in place of 1 cm the parts are 28.5 cm.
    [Fact]
    public void A_seam_and_narrower_allowances_are_tried_together_where_neither_is_enough()
    {
        const string Strip = "pieces: { facing: { rectangle: 54 x 6, cut: 1, seam: 1, pieced: 1, least: { seam: 0.5 } } }\ncloths: { shell: { width: 140 } }\nremnants: { end: { rectangle: 28.6 x 40 } }\n";
        FitPlan fit = FitPlanner.Make(Jobs.Good(Jobs.Head + Strip), Quick, default);
        Assert.Equal(
            "Everything fits with a seam across facing, cut in two with 1 cm on both joined edges, and with the seams of facing at 0.5 cm instead of 1 cm.",
            Assert.Single(fit.Cloths[0].Helps, help => help.Layout is not null).Sentence);
        Assert.Equal(["facing part 1", "facing part 2"], fit.Instead!.Cloths[0].Marker.Placements.Select(placement => placement.Piece.Name).Order());
    }

    [Fact]
    public void The_layout_with_a_seam_is_drawn_too()
    {
        FitPlan fit = Fit("leftovers/several.yaml");
        Assert.Equal(2, fit.Instead!.Cloths[0].Marker.Placements.Count(placement => placement.Piece.Name.StartsWith("facing part", StringComparison.Ordinal)));
        Assert.True(fit.Instead.IsComplete);
    }

    [Fact]
    public void What_a_print_would_ask_is_named_where_leftovers_do_not_keep_it()
    {
        FitPlan fit = Fit("leftovers/plaid.yaml");
        string[] lines = [.. FitSentences.Of(fit)];
        Assert.Equal("plaid: yes, everything comes out of the leftovers, laid as plain cloth.", lines[0]);
        Assert.Contains("  not kept: yoke.center matches back.center crosswise; back.A on a crosswise bar", lines);
        Assert.Contains(fit.Plan.Notes, note => note.Hint.StartsWith("Slide the pieces until the print meets", StringComparison.Ordinal));
        Assert.Empty(FitPlanner.Make(ReadText("leftovers/plaid.yaml", ", repeat: { along: 6, across: 8 } }\nmatch:\n  - yoke.center matches back.center crosswise\n  - back.A on a crosswise bar", " }"), Quick, default).Plan.Notes);
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

    private static Job ReadText(string fixture, string old, string replacement)
    {
        string text = File.ReadAllText(Fixtures.PathOf(fixture)).ReplaceLineEndings("\n");
        Assert.Contains(old, text, StringComparison.Ordinal);
        return Jobs.Good(text.Replace(old, replacement, StringComparison.Ordinal));
    }

    private static Job Read(string fixture) => JobReader.Read(Fixtures.PathOf(fixture), new DiskFiles()).Job!;
}
