using Nestmark.Geometry;
using Nestmark.Tests.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

/// <summary>Published worked examples of cloth consumption (references/trade.md 2.2, 2.3, 7.3), through the program's own reader, search and arithmetic.</summary>
public sealed class PublishedConsumptionTests
{
    // trade.md 7.3, 7 [DT-SHIRT]: rectangles with allowances, 20,756 cm² in all; on 56 in cloth 57.45 in = 1.596 yd; a dozen 19.2 yd, with 5 % 20.16 yd.
    // The published figure takes every bit of cloth for used; efficiency × lay length is that whatever the marker.
    [Fact]
    public void A_woven_shirt_takes_57_45_inches_of_56_inch_cloth_at_full_efficiency()
    {
        ClothPlan plan = Planned(
            """
            pieces:
              body: { rectangle: 80 x 61, cut: 2 }
              sleeve: { rectangle: 69 x 30, cut: 4 }
              collar: { rectangle: 45 x 8, cut: 2 }
              band: { rectangle: 35 x 4, cut: 2 }
              pocket: { rectangle: 16 x 13, cut: 1 }
              yoke: { rectangle: 52 x 14.5, cut: 2 }
            cloths: { shell: { width: 56 in, selvage: 0, lay: open, nap: none, ends: 0 } }
            """);
        double inches = plan.Marker.EfficiencyRatio * plan.Marker.LayLength.TotalInches;
        Assert.Equal(20_756, AreaSquareCentimeters(plan), 3);
        Assert.Equal(57.45, inches, 2);
        Assert.Equal(1.596, inches / 36, 3);
        Assert.Equal(20.16, Math.Round(inches / 36, 1) * 12 * 1.05, 2);
    }

    // trade.md 7.3, 8 [TC-TEE]: 70 x 102 cm body and two sleeves (both layers) of 25 x 49 cm at 150 g/m², neck 61 x 7 cm at 180 g/m²; a dozen with 7 % is 1.946 kg.
    [Fact]
    public void A_dozen_knit_t_shirts_weigh_1_946_kilograms()
    {
        ClothPlan jersey = Planned(
            """
            pieces: { body: { rectangle: 70 x 102, cut: 1 }, sleeve: { rectangle: 25 x 49, cut: 2 } }
            cloths: { jersey: { width: 180, selvage: 0, lay: open, ends: 0 } }
            """);
        ClothPlan rib = Planned(
            """
            pieces: { neck: { rectangle: 61 x 7, cut: 1 } }
            cloths: { rib: { width: 100, selvage: 0, lay: open, ends: 0 } }
            """);
        double kilograms = (AreaSquareCentimeters(jersey) * 150 + AreaSquareCentimeters(rib) * 180) / 1e7 * 12 * 1.07;
        Assert.Equal(1.946, kilograms, 3);
    }

    // trade.md 7.3, 9 [TC-TEE2]: (76 + 25) x (55 x 2) cm at 180 g/m²: 0.19998 kg each, 2.39976 kg a dozen.
    [Fact]
    public void A_knit_t_shirt_weighs_a_fifth_of_a_kilogram()
    {
        ClothPlan plan = Planned(
            """
            pieces: { whole: { rectangle: 101 x 110, cut: 1 } }
            cloths: { jersey: { width: 180, selvage: 0, lay: open, ends: 0 } }
            """);
        double kilograms = AreaSquareCentimeters(plan) * 180 / 1e7;
        Assert.Equal(0.19998, kilograms, 5);
        Assert.Equal(2.39976, kilograms * 12, 5);
    }

    // trade.md 2.2: 3 yd at 5 % -> 3.158 (3.15 is short); 4 yd at 10 % -> 4.444; 2.5 m at 6 % -> 2.660; 60 in losing 10 % leaves 54 in [PR-SHRINK].
    [Theory]
    [InlineData(3, 0.05, 3.158)]
    [InlineData(4, 0.10, 4.444)]
    [InlineData(2.5, 0.06, 2.660)]
    public void What_shrinks_in_length_is_bought_longer(double need, double shrinkage, double expected) =>
        Assert.Equal(expected, Purchasing.BeforeWash(Length.FromMeters(need), shrinkage).TotalMeters, 3);

    [Fact]
    public void What_shrinks_in_width_is_laid_narrower() =>
        Assert.Equal(54, (TestCloths.Open with { Width = Length.FromInches(60), Selvage = Length.Zero, WidthShrinkageRatio = 0.1 }).UsableWidth.TotalInches, 6);

    // trade.md 2.3 [OCS-END]: a 6 m marker with 2 cm at each end takes 6.04 m a ply, and a hundred plies lose 4 m.
    // A 5 m marker on a roll of 61 m: 12 plies and 1 m without ends, 12 plies and 0.52 m with 4 cm a ply.
    [Theory]
    [InlineData(6, 2, 6.04)]
    [InlineData(5, 0, 5)]
    [InlineData(5, 2, 5.04)]
    public void Both_ends_are_added_to_every_ply(double marker, double endCentimeters, double expected)
    {
        Length ply = Purchasing.For(TestCloths.Open with { Ends = Length.FromCentimeters(endCentimeters) }, Length.FromMeters(marker), MeasureSystem.Metric).WithEnds;
        Assert.Equal(Length.FromMeters(expected), ply);
        if (expected == 6.04)
            Assert.Equal(4, (ply * 100).TotalMeters - 600, 9);
        if (expected == 5.04)
            Assert.Equal((12, 520_000), ((int)(61_000_000 / ply.Micrometers), 61_000_000 % ply.Micrometers));
    }

    private static double AreaSquareCentimeters(ClothPlan plan) =>
        plan.Marker.EfficiencyRatio * plan.Marker.LayLength.TotalCentimeters * plan.Marker.Surface.UsableWidth.TotalCentimeters;

    private static ClothPlan Planned(string yaml)
    {
        Job job = Jobs.Good(Jobs.Head + "seam: 0\n" + yaml + "\n");
        ClothPlan plan = Planner.Make(job, new Effort(null, 0, 1, 1), (_, _) => { }, CancellationToken.None).Cloths.Single();
        Assert.Empty(plan.Marker.Unplaced);
        return plan;
    }
}
