using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

public sealed class ShoppingListTests
{
    [Theory]
    [InlineData("10 EUR, 2.50 EUR", "12.50 EUR in all")]
    [InlineData("10 EUR, -, 5 EUR, -", "15.00 EUR in all; cloth 2, cloth 4 without a price")]
    [InlineData("10 EUR, 3 USD, 1 EUR", "11.00 EUR and 3.00 USD in all")]
    [InlineData("10", "10.00 in all")]
    [InlineData("-, -", "")]
    public void Costs_are_added_up_by_currency(string prices, string expected)
    {
        ClothPlan[] cloths = [.. prices.Split(", ").Select((price, i) => Bought($"cloth {i + 1}", price))];
        Assert.Equal(expected, ShoppingList.Of(PlanOf(cloths)).TotalText);
    }

    [Fact]
    public void A_cloth_from_which_nothing_is_cut_is_not_on_the_list()
    {
        ClothPlan idle = Bought("idle", "7 EUR");
        idle = idle with { Marker = idle.Marker with { Placements = [] } };
        Assert.Equal(["shell"], ShoppingList.Of(PlanOf(idle, Bought("shell", "2 EUR"))).Lines.Select(line => line.Cloth.Name));
    }

    private static Plan PlanOf(params ClothPlan[] cloths) => new(
        new Job("Coat", "job.yaml", MeasureSystem.Metric, [], [.. cloths.Select(cloth => cloth.Cloth)], [new SizeCount("", 1)]), new Effort(1, null, 1, 1), [.. cloths], []);

    private static ClothPlan Bought(string name, string price)
    {
        string[] words = price.Split(' ');
        ClothPrice? perMeter = price == "-" ? null : new ClothPrice(decimal.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture), Length.FromMeters(1), words.Length > 1 ? words[1] : "");
        Cloth cloth = TestCloths.Open with { Name = name, Buying = new BuyingRule(Length.FromCentimeters(10), perMeter) };
        Demand demand = LayRules.TaskFor(cloth, [new(TestPieces.Rectangle("panel", 1000, 100, "1"), "", 1)]).Demands.Single();
        Marker marker = new(LaySurface.Of(cloth), Length.FromMeters(1), [new(demand.Piece, "", 1, 1, demand.Contact, demand.Turns[0], Point.Origin)], []);
        return new ClothPlan(cloth, marker, Purchasing.For(cloth, marker.LayLength, MeasureSystem.Metric));
    }
}
