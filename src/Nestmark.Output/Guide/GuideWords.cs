using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Output.Lays;
using Nestmark.Yardage;

namespace Nestmark.Output.Guide;

/// <summary>The sentences of the guide sheet.</summary>
internal static class GuideWords
{
    /// <summary>"Buy 1.7 m (1 7/8 yd)".</summary>
    public static string Headline(Purchase purchase) => $"Buy {purchase.Text} ({purchase.OtherText})";

    /// <summary>The cloth and how it lies.</summary>
    public static string ClothLine(ClothPlan cloth, MeasureSystem system) => cloth.Leftovers is not null ? $"Guide sheet · leftovers of {cloth.Cloth.Name}, right side up" : PieceWords.Joined(
        "Guide sheet", "cloth " + cloth.Cloth.Name, LengthWords.TapeInBoth(cloth.Cloth.Width, system) + " wide", LayWords.Phrase(cloth.Marker.Surface, system), NapWords(cloth.Cloth.Nap));

    /// <summary>How the length to buy comes about, one step a sentence.</summary>
    public static IEnumerable<string> BuyingSteps(ClothPlan cloth, MeasureSystem system)
    {
        if (cloth.Leftovers is { } table)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Nothing to buy for what lies here: it comes out of {table.Places.Length} {(table.Places.Length == 1 ? "leftover" : "leftovers")}.");
            yield break;
        }
        Purchase purchase = cloth.Purchase;
        Cloth goods = cloth.Cloth;
        foreach (string other in OtherForms(cloth, system))
            yield return other;
        yield return $"Lay length: {LengthWords.TapeInBoth(purchase.LayLength, system)}.";
        if (goods.Ends > Length.Zero)
            yield return $"With an end of {LengthWords.Tape(goods.Ends, system)} at both sides: {LengthWords.TapeInBoth(purchase.WithEnds, system)}.";
        if (goods.LengthShrinkageRatio > 0)
            yield return string.Create(CultureInfo.InvariantCulture, $"Before washing (shrinks {goods.LengthShrinkageRatio:0.#%} in length): {LengthWords.TapeInBoth(purchase.BeforeWash, system)}.");
        yield return $"Sold in steps of {LengthWords.Step(goods.Buying.Step, system)}: buy {purchase.Text} ({purchase.OtherText}).";
        if (purchase.Cost is decimal cost)
            yield return string.Create(CultureInfo.InvariantCulture, $"Cost: {cost:0.00} {purchase.Currency}").TrimEnd() + ".";
        yield return string.Create(CultureInfo.InvariantCulture, $"The pieces take {cloth.Marker.EfficiencyRatio * 100:0.0} % of the lay.");
        yield return string.Create(CultureInfo.InvariantCulture, $"Of the cloth bought, {Utilization.OfRatio(cloth) * 100:0.0} % goes into the pieces.");
    }

    /// <summary>What other forms of lay would need, where the form was to be chosen.</summary>
    public static IEnumerable<string> OtherForms(ClothPlan cloth, MeasureSystem system)
    {
        if (cloth.OtherForms.IsEmpty)
            yield break;
        yield return $"Best of the forms tried: {LayWords.Of(cloth.Marker.Surface.Form)}, {LengthWords.TapeInBoth(cloth.Marker.ClothLength, system)} of cloth.";
        yield return $"The others: {string.Join("; ", cloth.OtherForms.Select(other => LayWords.Need(other, system)))}.";
    }

    /// <summary>What one garment needs of each piece, and the numbers on the lay.</summary>
    public static IEnumerable<string> CutList(ClothPlan cloth) => Laid.AllOf(cloth)
        .GroupBy(laid => (PieceWords.Title(laid.Placement), PieceWords.Cut(laid.Placement.Piece)))
        .Select(group => $"{group.Key.Item1}: {group.Key.Item2} (no. {Ranges([.. group.Select(laid => laid.Number)])})");

    /// <summary>The cut list as a table, for a page of its own.</summary>
    public static Table CutTable(ClothPlan cloth) => new(
        [new("", "Cut list", 1, Drawings.Anchor.Start)], [.. CutList(cloth).Select(line => ImmutableArray.Create(line))]);

    /// <summary>Pieces without a place, and why.</summary>
    public static IEnumerable<string> NotPlaced(ClothPlan cloth) => cloth.Marker.Unplaced.Select(unplaced =>
    {
        string title = unplaced.Size.Length > 0 ? unplaced.Piece + " " + unplaced.Size : unplaced.Piece;
        return unplaced.Reason.StartsWith(title + " ", StringComparison.Ordinal) || unplaced.Reason.StartsWith(title + ":", StringComparison.Ordinal) ? unplaced.Reason : $"{title}: {unplaced.Reason}";
    });

    /// <summary>The plan's notes that concern a cloth and its pieces; those that concern none go to the first cloth.</summary>
    public static IEnumerable<string> Notes(Plan plan, ClothPlan cloth) => plan.Notes
        .Where(note => ClothOf(plan.Job, note.Where.Item) == cloth.Cloth.Name)
        .Select(note => NoteWords.Of(plan.Job, note))
        .Distinct();

    /// <summary>Numbers in order, runs drawn together: "1–3, 7".</summary>
    public static string Ranges(IReadOnlyList<int> numbers)
    {
        List<string> parts = [];
        for (int i = 0; i < numbers.Count;)
        {
            int end = i;
            while (end + 1 < numbers.Count && numbers[end + 1] == numbers[end] + 1)
                end++;
            parts.Add(end == i
                ? numbers[i].ToString(CultureInfo.InvariantCulture)
                : string.Create(CultureInfo.InvariantCulture, $"{numbers[i]}{(end == i + 1 ? ", " : "–")}{numbers[end]}"));
            i = end + 1;
        }
        return string.Join(", ", parts);
    }

    private static string ClothOf(Job job, string item) =>
        job.Cloths.FirstOrDefault(cloth => IsWithin(item, "cloths." + cloth.Name))?.Name
        ?? job.Pieces.FirstOrDefault(piece => IsWithin(item, piece.Where.Item))?.Cloth
        ?? job.Pieces.FirstOrDefault(piece => IsWithin(item, "pieces." + piece.Piece.Name))?.Cloth
        ?? job.Cloths[0].Name;

    private static bool IsWithin(string item, string key) => item == key || item.StartsWith(key + ".", StringComparison.Ordinal);

    private static string NapWords(Nap nap) => nap switch
    {
        Nap.OneWay => "with nap, one way",
        Nap.BySize => "with nap, each size one way",
        _ => "without nap",
    };
}
