using System.Globalization;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>The verdict on leftovers, a line a sentence.</summary>
public static class FitSentences
{
    /// <summary>What lies on which leftover, what is missing and why, how much more cloth would do, and what else would help.</summary>
    public static IEnumerable<string> Of(FitPlan fit) => fit.Cloths.SelectMany(cloth => Of(cloth, fit.Plan.Job.System));

    private static IEnumerable<string> Of(ClothFit fit, MeasureSystem system)
    {
        string name = fit.Cloth.Name;
        yield return fit.IsComplete ? $"{name}: yes, everything comes out of the leftovers{(fit.NotKept.IsEmpty ? "" : ", laid as plain cloth")}." : $"{name}: no, not everything comes out of the leftovers.";
        if (fit.Layout is { Leftovers: { } table } layout)
        {
            foreach (IGrouping<string, Placement> group in layout.Marker.Placements.GroupBy(placement => table.Under(placement).Name))
                yield return $"  from {group.Key}: {string.Join(", ", group.GroupBy(TitleOf).Select(Counted))}";
        }
        foreach (MissingPiece missing in fit.Missing)
            yield return $"  missing: {missing.Title}{(missing.Copies > 1 ? string.Create(CultureInfo.InvariantCulture, $" ({missing.Copies} times)") : "")}: {missing.Reason}";
        if (fit.More is { } more)
            yield return $"  {LengthWords.Tape(more.Marker.LayLength, system)} more of {name}, {LengthWords.Tape(fit.Cloth.Width, system)} wide and laid open, would do for what is missing: buy {more.Purchase.Text} ({more.Purchase.OtherText}).";
        foreach (FitHelp help in fit.Helps)
            yield return $"  {help.Sentence}";
        if (!fit.NotKept.IsEmpty)
            yield return $"  not kept: {string.Join("; ", fit.NotKept)}";
    }

    private static string TitleOf(Placement placement) => placement.Size.Length == 0 ? placement.Piece.Name : placement.Piece.Name + " " + placement.Size;

    private static string Counted(IGrouping<string, Placement> group) => group.Count() == 1
        ? group.Key
        : string.Create(CultureInfo.InvariantCulture, $"{group.Key} ({group.Count()} times)");
}
