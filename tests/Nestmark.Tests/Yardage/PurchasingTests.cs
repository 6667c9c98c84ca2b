using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

public sealed class PurchasingTests
{
    // references/trade.md 2.2 (arithmetic): 3 yd at 5 % -> 3.158; 4 yd at 10 % -> 4.444; 2.5 m at 6 % -> 2.660.
    [Theory]
    [InlineData(3, 914.4, 0.05, 3.158)]
    [InlineData(4, 914.4, 0.10, 4.444)]
    [InlineData(2.5, 1000, 0.06, 2.660)]
    public void Need_is_divided_by_what_the_wash_leaves(double need, double unitMillimeters, double shrinkage, double expected) =>
        Assert.Equal(expected, Purchasing.BeforeWash(Length.FromMillimeters(need * unitMillimeters), shrinkage).TotalMillimeters / unitMillimeters, 3);

    // references/trade.md 2.1: need 3.2 m -> 3.5 m at half-meter steps [AKC]; 3.2 m at 10 cm steps (arithmetic).
    [Theory]
    [InlineData(50, "3.5 m")]
    [InlineData(10, "3.2 m")]
    public void Shop_steps_round_up_and_only_when_needed(double stepCentimeters, string expected)
    {
        Cloth cloth = TestCloths.Open with { Buying = new BuyingRule(Length.FromCentimeters(stepCentimeters), null) };
        Assert.Equal(expected, Purchasing.For(cloth, Length.FromMeters(3.2), MeasureSystem.Metric).Text);
    }

    // references/trade.md 2.3 [OCS-END]: 6 m marker + 2 cm each end = 4 cm per ply.
    [Fact]
    public void Both_ends_are_added()
    {
        Cloth cloth = TestCloths.Open with { Ends = Length.FromCentimeters(2) };
        Assert.Equal(Length.FromMeters(6.04), Purchasing.For(cloth, Length.FromMeters(6), MeasureSystem.Metric).WithEnds);
    }

    // By hand: 1.52 m and 2 x 2 cm, 4 % lost: 1.56 / 0.96 = 1.625 m; sold by 10 cm: 1.7 m = 1.859 yd, so 1 7/8 yd; at 18.50 per m 31.45.
    [Fact]
    public void A_purchase_goes_through_every_step()
    {
        Cloth cloth = TestCloths.Open with
        {
            Ends = Length.FromCentimeters(2),
            LengthShrinkageRatio = 0.04,
            Buying = new BuyingRule(Length.FromCentimeters(10), new ClothPrice(18.50m, Length.FromMeters(1), "EUR")),
        };
        Purchase expected = new(
            Length.FromMeters(1.52), Length.FromMeters(1.56), Length.FromMeters(1.625), Length.FromMeters(1.7),
            "1.7 m", "1 7/8 yd", 31.45m, "EUR");
        Assert.Equal(expected, Purchasing.For(cloth, Length.FromMeters(1.52), MeasureSystem.Metric));
    }

    [Fact]
    public void An_imperial_purchase_names_yards_first()
    {
        Cloth cloth = TestCloths.Open with
        {
            Buying = new BuyingRule(Length.FromYards(0.125), new ClothPrice(12m, Length.FromYards(1), "$")),
        };
        Purchase purchase = Purchasing.For(cloth, Length.FromInches(63.1), MeasureSystem.Imperial);
        Assert.Equal(("1 7/8 yd", "1.8 m", 22.50m), (purchase.Text, purchase.OtherText, purchase.Cost));
    }

    // 0.145 exactly: half up, not to the even cent.
    [Fact]
    public void Cost_is_rounded_half_up()
    {
        Cloth cloth = TestCloths.Open with { Buying = new BuyingRule(Length.FromCentimeters(10), new ClothPrice(1.45m, Length.FromMeters(1), "")) };
        Assert.Equal(0.15m, Purchasing.For(cloth, Length.FromCentimeters(10), MeasureSystem.Metric).Cost);
    }

    [Fact]
    public void Nothing_placed_is_nothing_bought()
    {
        Cloth cloth = TestCloths.Open with { Ends = Length.FromCentimeters(2) };
        Assert.Equal(Length.Zero, Purchasing.For(cloth, Length.Zero, MeasureSystem.Metric).ToBuy);
    }

    /// <summary>Arithmetic: cloth of exactly n steps, shrunk by p percent, must lead back to n steps. Binary fractions would now and then give n + 1.</summary>
    [Fact]
    public void What_a_whole_number_of_steps_shrinks_to_asks_for_just_those_steps() =>
        Gen.Select(Gen.Int[1, 200], Gen.Int[0, 30]).Check(2000, (steps, percent) =>
        {
            Cloth cloth = TestCloths.Open with { LengthShrinkageRatio = percent / 100.0 };
            Length shrunk = Length.FromMicrometers(steps * 100_000L * (100 - percent) / 100);
            Assert.Equal(Length.FromCentimeters(10 * steps), Purchasing.For(cloth, shrunk, MeasureSystem.Metric).ToBuy);
        });

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Shrinkage_outside_0_to_1_is_the_callers_mistake(double shrinkage) =>
        Assert.Throws<ArgumentException>(() => Purchasing.BeforeWash(Length.FromMeters(1), shrinkage));
}
