using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Tests;

/// <summary>Cloths to begin from with <c>with</c>.</summary>
internal static class TestCloths
{
    /// <summary>140 cm wide, selvages 1 cm, open, no nap, nothing lost, no ends, sold by 10 cm without a price.</summary>
    public static Cloth Open { get; } = new()
    {
        Name = "shell",
        Width = Length.FromCentimeters(140),
        Selvage = Length.FromCentimeters(1),
        Lay = LayForm.Open,
        Nap = Nap.None,
        LengthShrinkageRatio = 0,
        WidthShrinkageRatio = 0,
        Ends = Length.Zero,
        Gap = Length.Zero,
        Tilt = Angle.Zero,
        Buying = new BuyingRule(Length.FromCentimeters(10), null),
    };

    /// <summary>The same, folded lengthwise.</summary>
    public static Cloth Folded { get; } = Open with { Lay = LayForm.Folded };
}
