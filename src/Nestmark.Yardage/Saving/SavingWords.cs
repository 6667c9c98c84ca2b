using System.Collections.Immutable;
using System.Globalization;

namespace Nestmark.Yardage.Saving;

/// <summary>Ways to save as people read them, the same in every output.</summary>
public static class SavingWords
{
    /// <summary>One sentence a way; the name of the cloth before it where the plan has several. When there is none, a sentence that says so and what was tried.</summary>
    /// <param name="plan">A plan that was asked for savings; one that was not gives nothing.</param>
    public static ImmutableArray<string> Of(Plan plan) => plan.Savings switch
    {
        null => [],
        { Ways.IsEmpty: false } savings => [.. savings.Ways.Select(way => Of(plan, way))],
        { Tried.IsEmpty: true } => ["Nothing could be tried."],
        { } savings => [$"Nothing that was tried needs less cloth to buy ({string.Join("; ", savings.Tried)})."],
    };

    /// <summary>The sentences that concern one cloth; about nothing found, only for the first cloth.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="cloth">One of its cloths.</param>
    public static ImmutableArray<string> Of(Plan plan, ClothPlan cloth) => plan.Savings is { Ways.IsEmpty: false } savings
        ? [.. savings.Ways.Where(way => way.Before.Cloth.Name == cloth.Cloth.Name).Select(way => Of(plan, way))]
        : cloth == plan.Cloths[0] ? Of(plan) : [];

    private static string Of(Plan plan, SavingWay way)
    {
        string cloth = plan.Cloths.Length > 1 ? way.Before.Cloth.Name + ": " : "";
        string saved = LengthWords.ToBuy(way.Saved, plan.Job.System);
        string cost = way.SavedCost is decimal amount and > 0
            ? string.Create(CultureInfo.InvariantCulture, $" and {amount:0.00} {way.Before.Purchase.Currency}").TrimEnd()
            : "";
        return $"{cloth}{way.What}: {saved}{cost} less, {way.After.Purchase.Text} instead of {way.Before.Purchase.Text}; {way.Consequence}.";
    }
}
