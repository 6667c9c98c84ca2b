using System.Collections.Immutable;

namespace Nestmark.Yardage;

/// <summary>Everything to buy for a plan.</summary>
/// <param name="Lines">The cloths of which something is bought, in the order of the job.</param>
/// <param name="Totals">The cost in each currency, in the order in which the currencies first come.</param>
/// <param name="WithoutPrice">Names of the cloths that are bought and have no price.</param>
public sealed record ShoppingList(ImmutableArray<ClothPlan> Lines, ImmutableArray<ShoppingTotal> Totals, ImmutableArray<string> WithoutPrice)
{
    /// <summary>The list for a plan.</summary>
    public static ShoppingList Of(Plan plan)
    {
        ImmutableArray<ClothPlan> lines = [.. plan.Cloths.Where(cloth => cloth.Leftovers is null && !cloth.Marker.Placements.IsEmpty)];
        return new ShoppingList(
            lines,
            [.. lines.Where(line => line.Purchase.Cost is not null).GroupBy(line => line.Purchase.Currency)
                .Select(group => new ShoppingTotal(group.Sum(line => line.Purchase.Cost!.Value), group.Key))],
            [.. lines.Where(line => line.Purchase.Cost is null).Select(line => line.Cloth.Name)]);
    }

    /// <summary>"39.55 EUR in all; lining without a price", or an empty text when nothing has a price.</summary>
    public string TotalText
    {
        get
        {
            if (Totals.IsEmpty)
                return "";
            string sum = string.Join(" and ", Totals.Select(total =>
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{total.Cost:0.00} {total.Currency}").TrimEnd()));
            return WithoutPrice.IsEmpty ? $"{sum} in all" : $"{sum} in all; {string.Join(", ", WithoutPrice)} without a price";
        }
    }
}
