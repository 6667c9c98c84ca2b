using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>What the user should know about a matched lay: every such sentence.</summary>
internal static class MatchNotes
{
    /// <summary>The notes of one cloth; none when nothing is matched.</summary>
    /// <param name="job">The job.</param>
    /// <param name="plan">The plan of the cloth.</param>
    public static IEnumerable<Problem> Of(Job job, ClothPlan plan)
    {
        if (plan.Matching is not { } cost)
            return [];
        Place where = new(job.Source, 0, 0, "cloths." + plan.Cloth.Name);
        return Sentences(job, plan, cost).Select(pair => new Problem(Severity.Note, where, pair.What, pair.Hint));
    }

    private static IEnumerable<(string What, string Hint)> Sentences(Job job, ClothPlan plan, MatchingCost cost)
    {
        string plain = LengthWords.Tape(cost.PlainLength, job.System);
        string what = cost.ExtraLength == Length.Zero
            ? $"Matching {plan.Cloth.Name} costs nothing more than plain cloth ({plain})."
            : $"Matching {plan.Cloth.Name} costs {LengthWords.Tape(cost.ExtraLength, job.System)} more than plain cloth ({plain}).";
        yield return (what, Thumb(job, plan, cost));
        if (plan.Marker.FirstBar is { } bar)
            yield return (BeginWords(bar, job), "Cut the end square there; lay every ply the same.");
        if (plan.Marker.Surface.HasTwoLayers)
            yield return ("Both layers are cut at once.", "Pin the bars of the upper layer on those of the lower one before cutting, or cut in one layer.");
        if (plan.Cloth.Repeat is { Across: not null, FirstBar: null })
            yield return ($"The plan takes a bar in the {(plan.Cloth.Lay == LayForm.Tubular ? "fold" : "middle")} of {plan.Cloth.Name}.", "Measure from the edge to a bar and write it as first_bar when it lies elsewhere.");
        if (plan.Cloth.Repeat is { Balance: PrintBalance.Uneven })
            yield return ($"The print of {plan.Cloth.Name} is uneven, so every piece lies the same way up.", "");
    }

    private static string Thumb(Job job, ClothPlan plan, MatchingCost cost)
    {
        if (cost.RuleOfThumb is not { } thumb)
            return "";
        string repeat = LengthWords.Tape(plan.Cloth.Repeat!.Along!.Value, job.System);
        return cost.StackedPieces < 2
            ? "Rule of thumb: nothing, since the matched pieces lie side by side."
            : string.Create(CultureInfo.InvariantCulture, $"Rule of thumb: one repeat of {repeat} for each of {cost.StackedPieces} matched pieces above each other, {LengthWords.Tape(thumb, job.System)}.");
    }

    private static string BeginWords(Length bar, Job job) => bar == Length.Zero
        ? "The lay begins on a crosswise bar."
        : $"The lay begins {LengthWords.Tape(bar, job.System)} before a crosswise bar.";
}
