using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Tests.Pieces.Drafting;

/// <summary>Bias strip against references/trade.md 9.2.</summary>
public sealed class BiasYieldTests
{
    [Theory]
    [InlineData(20, 2, 200)]
    [InlineData(30, 3, 300)]
    [InlineData(22, 3, 161.3)]
    [InlineData(12, 2, 72)]
    [InlineData(13, 2, 84.5)]
    [InlineData(15, 2, 112.5)]
    [InlineData(32, 2.25, 455.1)]
    public void Length_by_area_is_that_of_the_table(double side, double width, double length) =>
        Assert.Equal(length, BiasYield.LengthByAreaMillimeters(In(side), In(width)) / 25.4, 1);

    [Theory]
    [InlineData(250, 2, 22.36)]
    [InlineData(100, 3.5, 18.71)]
    public void Side_by_area_is_that_of_the_table(double length, double width, double side) =>
        Assert.Equal(side, BiasYield.SideByAreaMillimeters(In(length), In(width)) / 25.4, 2);

    // [TBS], 1/4 in seams; T 98 from the source, the others (arithmetic).
    [Theory]
    [InlineData(98, 1, 7, 10.40, 98)]
    [InlineData(250, 2, 8, 23.13, 256)]
    [InlineData(450, 2.25, 10, 32.32, 450)]
    public void Whole_strips_need_the_squares_of_the_source(double length, double width, int strips, double side, double yield)
    {
        Assert.Equal(strips, BiasYield.WholeStrips(In(length), In(width)));
        Assert.Equal(side, BiasYield.SideForMillimeters(strips, In(width), In(0.25)) / 25.4, 2);
        Assert.Equal(yield, BiasYield.LengthOfMillimeters(strips, In(width)) / 25.4, 6);
        // A leftover of that very size gives just as much.
        Length rounded = Length.FromMillimeters(BiasYield.SideForMillimeters(strips, In(width), In(0.25)) + 0.001);
        Assert.Equal(yield, BiasYield.LengthFromMillimeters(rounded, rounded, In(width), In(0.25)) / 25.4, 2);
    }

    [Fact]
    public void Whole_strips_never_promise_more_than_the_area_holds()
    {
        foreach (int side in Enumerable.Range(5, 60))
        {
            double whole = BiasYield.LengthFromMillimeters(In(side), In(side), In(2), Length.Zero);
            Assert.True(whole <= BiasYield.LengthByAreaMillimeters(In(side), In(2)) + 1e-6);
        }
    }

    [Fact]
    public void Strips_lie_within_the_cloth_at_45_degrees_and_join_to_the_length()
    {
        DraftingCloth cloth = new(Length.FromCentimeters(138), 1, length => length.ToString());
        DraftedShape shape = BiasDraft.Strips(new BiasMeasures(Length.FromMeters(6), Length.FromCentimeters(4), Length.FromMillimeters(6)), cloth).Shape!;
        // (138 - 1.2) √2 = 193.5 cm a strip, so 6 m take 4 of 150 cm.
        Assert.Equal(new CutQuantity(4, CutKind.Copies), shape.Cut);
        Assert.Equal(GrainRule.Bias, shape.Grain);
        Piece strip = CircleSkirtTests.Made(shape, 6);
        Assert.Equal(150, strip.Edges.Max(edge => edge.SeamLineLength.TotalCentimeters), 2);
        Assert.Equal(150 * 4, Judge.ToNts(strip.SeamLine).Area / 1e8, 1);
        Polygon laid = Turn.By(Angle.FromDegrees(45)).Apply(strip.CuttingLine);
        Assert.True(laid.Bounds.Height <= 1_380_000);
        // Ends lie on the straight grain, so the cut depth is length / √2 and two allowances.
        Assert.Equal(150 / Math.Sqrt(2) + 1.2, laid.Bounds.Height / 10_000.0, 1);
    }

    [Fact]
    public void Strips_of_folded_cloth_are_even_in_number_and_their_own_mirror_image()
    {
        DraftingCloth cloth = new(Length.FromCentimeters(138), 2, length => length.ToString());
        DraftedShape shape = BiasDraft.Strips(new BiasMeasures(Length.FromMeters(4), Length.FromCentimeters(4), Length.FromMillimeters(6)), cloth).Shape!;
        // 69 √2 - 4 - 1.2 = 92.4 cm a strip, so 4 m take 5, and 6 from two layers.
        Assert.Equal(new CutQuantity(6, CutKind.Copies), shape.Cut);
        Piece strip = CircleSkirtTests.Made(shape, 6);
        Assert.True(strip.SeamLine.Outer.Select(point => point with { Y = strip.SeamLine.Bounds.MaxY + strip.SeamLine.Bounds.MinY - point.Y }).ToHashSet().SetEquals(strip.SeamLine.Outer));
        Assert.True(Turn.By(Angle.FromDegrees(45)).Apply(strip.CuttingLine).Bounds.Height <= 690_000);
    }

    [Fact]
    public void A_leftover_that_is_too_small_says_how_much_is_missing()
    {
        DraftingCloth cloth = new(Length.FromCentimeters(138), 1, length => length.TotalCentimeters.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " cm");
        DraftingResult result = BiasDraft.Leftover(new BiasMeasures(Length.FromMeters(10), Length.FromCentimeters(4), Length.Zero), Length.FromCentimeters(60), Length.FromCentimeters(45), cloth);
        // 60 / (4 √2) = 10.6: 10 strips of 45 √2 = 636.4; 45 / (4 √2) = 7.95: 7 of 60 √2 = 594 cm.
        Assert.Null(result.Shape);
        Assert.Contains("gives 636.4 cm", result.What, StringComparison.Ordinal);
        Assert.Contains("363.6 cm more", result.What, StringComparison.Ordinal);
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
