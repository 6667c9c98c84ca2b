using Nestmark.Geometry;

namespace Nestmark.Yardage.Saving;

/// <summary>A change that was laid and needs less cloth.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="What">The change in words: "lay it open".</param>
/// <param name="Consequence">What it asks in return; a phrase.</param>
/// <param name="Before">The plan of the cloth without the change.</param>
/// <param name="After">With it; its marker is verified as any other.</param>
public sealed record SavingWay(SavingKind Kind, string What, string Consequence, ClothPlan Before, ClothPlan After)
{
    /// <summary>How much less is bought; above zero.</summary>
    public Length Saved => Before.Purchase.ToBuy - After.Purchase.ToBuy;

    /// <summary>How much less it costs; <c>null</c> without a price, and for cloth of another width, whose price is not known.</summary>
    public decimal? SavedCost => Kind == SavingKind.WiderCloth ? null : Before.Purchase.Cost - After.Purchase.Cost;
}
