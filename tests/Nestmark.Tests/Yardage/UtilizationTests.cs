using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

public sealed class UtilizationTests
{
    // references/trade.md 7.1 (arithmetic): 85 %, 6 m, 0.04 m, 1.48 on 1.50 m -> 83.31 %.
    [Fact]
    public void The_chain_of_losses_gives_the_worked_value() => Assert.Equal(
        0.8331, Utilization.ChainRatio(0.85, Length.FromMeters(6), Length.FromMeters(6.04), Length.FromMeters(1.48), Length.FromMeters(1.50)), 4);

    // By hand: a piece of 100 x 69 cm on 138 usable of 140 cm, bought 1.2 m that shrink by 10 % to 1.08 m: 6900 / (108 x 140).
    [Fact]
    public void Ends_selvages_shrinkage_and_rounding_up_all_count()
    {
        Cloth cloth = TestCloths.Open with { LengthShrinkageRatio = 0.1, Ends = Length.FromCentimeters(2) };
        LayTask task = LayRules.TaskFor(cloth, [new(TestPieces.Rectangle("half", 1000, 690, "1"), "", 1)]);
        Demand demand = task.Demands.Single();
        Marker marker = new(task.Surface, Length.FromMeters(1), [new(demand.Piece, "", 1, 1, demand.Contact, demand.Turns[0], Point.Origin)], []);
        ClothPlan plan = new(cloth, marker, Purchasing.For(cloth, marker.LayLength, MeasureSystem.Metric));
        Assert.Equal(Length.FromMeters(1.2), plan.Purchase.ToBuy);
        Assert.Equal(6900 / (108.0 * 140), Utilization.OfRatio(plan), 6);
    }

    [Fact]
    public void Nothing_bought_is_nothing_used()
    {
        Marker marker = new(LaySurface.Of(TestCloths.Open), Length.Zero, [], []);
        Assert.Equal(0, Utilization.OfRatio(new ClothPlan(TestCloths.Open, marker, Purchasing.For(TestCloths.Open, Length.Zero, MeasureSystem.Metric))));
    }

    [Fact]
    public void A_cloth_shorter_than_its_lay_or_narrower_than_its_usable_width_is_refused()
    {
        Length one = Length.FromMeters(1);
        Assert.Throws<ArgumentException>(() => Utilization.ChainRatio(1, one, one / 2, one, one));
        Assert.Throws<ArgumentException>(() => Utilization.ChainRatio(1, one, one, one, one / 2));
    }
}
