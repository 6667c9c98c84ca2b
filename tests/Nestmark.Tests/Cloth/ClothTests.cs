using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Tests.Cloths;

public sealed class ClothTests
{
    // references/trade.md 2.2 [PR-SHRINK]: 60 in losing 10 % leaves 54 in.
    [Fact]
    public void Sixty_inches_losing_ten_percent_leave_54_inches()
    {
        Cloth cloth = TestCloths.Open with { Width = Length.FromInches(60), Selvage = Length.Zero, WidthShrinkageRatio = 0.10 };
        Assert.Equal(Length.FromInches(54), cloth.UsableWidth);
    }

    // design.md 5.1 and 5.3: the example job (140 cm, selvage 1 cm, 2 % of the width) by hand: 140 x 0.98 - 2 = 135.2 cm.
    [Fact]
    public void Selvages_come_off_after_the_shrinkage()
    {
        Cloth cloth = TestCloths.Folded with { WidthShrinkageRatio = 0.02 };
        Assert.Equal(Length.FromMillimeters(1352), cloth.UsableWidth);
        Assert.Equal(Length.FromMillimeters(676), LaySurface.Of(cloth).Depth);
    }

    [Fact]
    public void Folded_cloth_is_half_as_deep_and_has_two_layers()
    {
        LaySurface surface = LaySurface.Of(TestCloths.Folded);
        Assert.Equal((Length.FromCentimeters(69), 2, true), (surface.Depth, surface.Bands.Single().Layers, surface.HasFold));
    }

    [Fact]
    public void Open_cloth_is_as_deep_as_it_is_wide_and_has_one_layer()
    {
        LaySurface surface = LaySurface.Of(TestCloths.Open);
        Assert.Equal((Length.FromCentimeters(138), 1, false), (surface.Depth, surface.Bands.Single().Layers, surface.HasFold));
    }

    [Fact]
    public void Cloth_that_is_all_selvage_makes_no_lay() =>
        Assert.Throws<ArgumentException>(() => LaySurface.Of(TestCloths.Open with { Selvage = Length.FromCentimeters(70) }));

    [Fact]
    public void Full_width_for_a_usable_width_is_the_least_that_leaves_it() =>
        Gen.Select(Gen.Long[1, 3_000_000], Gen.Int[0, 20], Gen.Long[0, 30_000]).Check(2000, (usable, percent, selvage) =>
        {
            Cloth cloth = TestCloths.Open with { WidthShrinkageRatio = percent / 100.0, Selvage = Length.FromMicrometers(selvage) };
            Length width = cloth.FullWidthFor(Length.FromMicrometers(usable));
            Length narrower = width - Length.FromMicrometers(1);
            Assert.True((cloth with { Width = width }).UsableWidth.Micrometers >= usable);
            Assert.True((cloth with { Width = narrower }).UsableWidth.Micrometers < usable);
        });
}
