using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Tests.Input;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Tests.Yardage.Saving;

/// <summary>Ways to save on jobs of rectangles, where the saving can be told by hand.</summary>
public sealed class SavingSearchTests
{
    private static readonly Effort Quick = new(null, 400, 2, 1);

    private const string Panels = "pieces: { a: { rectangle: 50 x 40, cut: 1 pair }, b: { rectangle: 50 x 58, cut: 1 pair } }\nseam: 0\n";

    [Fact]
    public void Laying_it_open_is_told_with_what_it_asks_in_return()
    {
        // Folded 69 cm deep, one of 45 cm lies behind the other: 150 cm. Open, three lie across 138 cm: 100 cm.
        Plan plan = Made("pieces: { a: { rectangle: 50 x 45, cut: 3 pairs } }\nseam: 0\n", "width: 140, selvage: 1, nap: none, ends: 0, buy: { price: 10 EUR per m }");
        SavingWay open = plan.Savings!.Ways.Single(way => way.What == "lay it open");
        Assert.Equal((Length.FromCentimeters(50), 5.00m), (open.Saved, open.SavedCost));
        Assert.Contains(
            "lay it open: 50 cm and 5.00 EUR less, 1 m instead of 1.5 m; 6 pieces to lay and trace one by one instead of 3, 3 of them turned over.", SavingWords.Of(plan));
    }

    [Fact]
    public void Wider_cloth_names_the_price_up_to_which_it_pays()
    {
        Plan plan = Made("pieces: { a: { rectangle: 60 x 60, cut: 4 } }\nseam: 0\n", "width: 100, selvage: 0, lay: open, nap: one-way, ends: 0, buy: { price: 10 EUR per m }");
        SavingWay wider = plan.Savings!.Ways.Single(way => way.Kind == SavingKind.WiderCloth);
        Assert.Contains("shell: cloth 140 cm wide", plan.Savings.Tried);

        // On 100 cm one lies behind the other: 2.4 m, 24 EUR. On 140 two side by side: 1.2 m, so up to 20 EUR a meter.
        Assert.Equal((Length.FromCentimeters(120), null), (wider.Saved, wider.SavedCost));
        Assert.Equal("cheaper while a meter of it costs less than 20.00 EUR", wider.Consequence);
        Assert.Equal("cloth 140 cm wide", wider.What);
    }

    [Fact]
    public void A_piece_is_turned_across_the_grain_only_on_cloth_without_nap()
    {
        const string Pieces = "pieces: { sash: { rectangle: 120 x 20, cut: 1 } }\nseam: 0\n";
        SavingWay across = Made(Pieces, "width: 140, selvage: 1, lay: open, nap: none, ends: 0").Savings!.Ways.Single();
        Assert.Equal((SavingKind.TurnedAcross, Length.FromCentimeters(100)), (across.Kind, across.Saved));
        Assert.Equal("sash then hangs and gives the other way", across.Consequence);
        Assert.DoesNotContain(Made(Pieces, "width: 140, selvage: 1, lay: open, nap: one-way, ends: 0").Savings!.Tried, tried => tried.Contains("across", StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_that_may_be_pieced_is_laid_in_two_parts_and_no_other_is()
    {
        const string Pieces = "pieces: { facing: { rectangle: 80 x 20, cut: 1, pieced: 1 }, panel: { rectangle: 41 x 60, cut: 1 } }\nseam: 0\n";
        SavingWay pieced = Made(Pieces, "width: 102, selvage: 0, lay: open, nap: one-way, ends: 0, buy: { step: 1 cm }").Savings!.Ways.Single(way => way.Kind == SavingKind.Pieced);

        // Beside the panel 80 cm are as long as the facing; its two parts of 40 + 1 cm lie side by side, and with the panel 20 + 20 + 60 cm take nearly all of the width.
        Assert.Equal(Length.FromCentimeters(39), pieced.Saved);
        Assert.Equal(("cut facing in two", "a seam across facing, with 1 cm on both joined edges"), (pieced.What, pieced.Consequence));
        Assert.DoesNotContain(Made(Pieces.Replace(", pieced: 1", "", StringComparison.Ordinal), "width: 100, lay: open").Savings!.Tried, tried => tried.Contains("in two", StringComparison.Ordinal));
    }

    // By hand: two halves of 61 x 20 cm on one fold are 122 cm long; in two parts each the four halves of 30.5 + 1 cm need 126 cm of it, which saves nothing, but it is tried.
    [Fact]
    public void A_half_piece_on_the_fold_is_tried_in_two_parts_that_both_lie_on_it() => Assert.Contains(
        "shell: cut yoke in two",
        Made("pieces: { yoke: { rectangle: 61 x 20, cut: 2 on fold, pieced: 1 } }\nseam: 0\n", "width: 100, lay: folded").Savings!.Tried);

    [Fact]
    public void Seams_become_narrower_and_hems_stay()
    {
        Plan plan = Made("pieces: { a: { rectangle: 48 x 20, cut: 2, seam: 1.5, edges: { D-A: 4 } } }\n", "width: 26, selvage: 0, lay: open, nap: one-way, ends: 0, buy: { step: 1 cm }");
        SavingWay seams = plan.Savings!.Ways.Single(way => way.Kind == SavingKind.NarrowerSeams);

        // Two pieces of 4 + 48 + 1.5 cm one behind the other; half a centimeter less each.
        Assert.Equal(Length.FromCentimeters(107), seams.Before.Purchase.ToBuy);
        Assert.Equal(Length.FromCentimeters(106), seams.After.Purchase.ToBuy);
    }

    [Fact]
    public void A_gap_that_costs_cloth_is_named()
    {
        Plan plan = Made("pieces: { a: { rectangle: 50 x 20, cut: 3, seam: 0 } }\n", "width: 24, selvage: 0, lay: open, ends: 0, gap: 2, buy: { step: 1 cm }");
        SavingWay gap = plan.Savings!.Ways.Single(way => way.Kind == SavingKind.NoGap);
        Assert.Equal(Length.FromCentimeters(4), gap.Saved);
    }

    [Fact]
    public void To_ignore_the_nap_is_never_tried_and_every_marker_keeps_it()
    {
        Plan plan = Made(Panels, "width: 140, selvage: 1, nap: one-way, ends: 0");
        Assert.NotEmpty(plan.Savings!.Tried);
        Assert.All(plan.Savings.Ways, way => Assert.Equal(Nap.OneWay, way.After.Cloth.Nap));
        Assert.DoesNotContain(plan.Savings.Tried, tried => tried.Contains("nap", StringComparison.Ordinal));
    }

    [Fact]
    public void The_greatest_saving_comes_first_and_every_way_places_everything()
    {
        Plan plan = Made("pieces: { a: { rectangle: 50 x 46, cut: 3 pairs }, sash: { rectangle: 120 x 20, cut: 2 } }\n", "width: 140, selvage: 1, nap: none, gap: 1");
        Assert.Equal(plan.Savings!.Ways.OrderByDescending(way => way.Saved).Select(way => way.What), plan.Savings.Ways.Select(way => way.What));
        Assert.All(plan.Savings.Ways, way => Assert.Empty(way.After.Marker.Unplaced));
        Assert.All(plan.Savings.Ways, way => Assert.True(way.Saved > Length.Zero));
    }

    [Fact]
    public void When_nothing_saves_the_plan_says_what_was_tried()
    {
        Plan plan = Made("pieces: { a: { rectangle: 50 x 20, cut: 2, seam: 0 } }\n", "width: 160, lay: tubular, ends: 0");
        Assert.Equal("Nothing could be tried.", Assert.Single(SavingWords.Of(plan)));
        plan = Made("pieces: { a: { rectangle: 50 x 20, cut: 1, seam: 0 } }\n", "width: 150, selvage: 0, lay: open, ends: 0");
        string nothing = Assert.Single(SavingWords.Of(plan));
        Assert.StartsWith("Nothing that was tried needs less cloth to buy (", nothing, StringComparison.Ordinal);
        Assert.Contains("shell: cloth 160 cm wide", nothing, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_steps_and_seed_give_the_same_advice() => Assert.Equal(
        SavingWords.Of(Made(Panels, "width: 140, nap: none")).AsEnumerable(), SavingWords.Of(Made(Panels, "width: 140, nap: none")).AsEnumerable());

    [Fact]
    public void A_search_that_is_stopped_tells_no_half_tried_way()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Plan plan = SavingSearch.Make(JobOf(Panels, "width: 140, nap: none"), new Effort(600, null, 2, 1), (_, _) => { }, stop.Token);
        Assert.Empty(plan.Savings!.Tried);
        Assert.True(plan.IsComplete);
    }

    [Fact]
    public void A_plan_that_was_not_asked_has_no_savings() => Assert.Empty(
        SavingWords.Of(Planner.Make(JobOf(Panels, "width: 140"), Quick, (_, _) => { }, CancellationToken.None)));

    private static Job JobOf(string pieces, string cloth) => Jobs.Good(Jobs.Head + pieces + $"cloths: {{ shell: {{ {cloth} }} }}\n");

    private static Plan Made(string pieces, string cloth) => SavingSearch.Make(JobOf(pieces, cloth), Quick, (_, _) => { }, CancellationToken.None);
}
