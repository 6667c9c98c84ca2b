using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Nesting;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Cli;

/// <summary>The closing words of <c>nestmark lay</c>.</summary>
internal static class LaySummary
{
    /// <summary>Says what to buy and how to fold it, what does not fit, which files were written and where to look first.</summary>
    public static void Write(TextWriter writer, Plan plan, WrittenFiles written, Talk talk)
    {
        bool full = talk == Talk.Full;
        if (full)
            writer.WriteLine($"{writer.NewLine}{plan.Job.Title}");
        foreach (ClothPlan cloth in plan.Cloths)
        {
            writer.WriteLine(ToBuy(cloth, plan.Job.System));
            if (full && cloth.Marker.Placements.Length > 0 && cloth.Leftovers is null)
            {
                writer.WriteLine(HowToLay(cloth, plan.Job.System));
                writer.WriteLine(HowItLies(cloth, plan.Job.System));
                if (!cloth.OtherForms.IsEmpty)
                    writer.WriteLine($"  best of the forms tried; the others: {string.Join("; ", cloth.OtherForms.Select(other => LayWords.Need(other, plan.Job.System)))}");
            }
            foreach (Unplaced unplaced in cloth.Marker.Unplaced)
                writer.WriteLine($"  not placed: {unplaced.Reason}");
        }
        WriteList(writer, ShoppingList.Of(plan), plan);
        foreach (string way in SavingWords.Of(plan))
            writer.WriteLine("to save: " + way);
        if (!full)
            return;
        foreach (Problem note in plan.Notes)
            writer.WriteLine("note: " + NoteWords.Of(plan.Job, note));
        if (written.Names.Length > 0)
            WriteFiles(writer, written);
    }

    // The lines above are the list; of several cloths with prices it ends with the sum.
    private static void WriteList(TextWriter writer, ShoppingList list, Plan plan)
    {
        if (plan.Cloths.Length > 1 && list.TotalText.Length > 0)
            writer.WriteLine("shopping list: " + list.TotalText);
    }

    private static string ToBuy(ClothPlan plan, MeasureSystem system)
    {
        if (plan.Leftovers is { } table)
            return string.Create(CultureInfo.InvariantCulture, $"{plan.Cloth.Name}: {plan.Marker.Placements.Length} pieces come out of the leftovers ({string.Join(", ", table.Places.Select(place => place.Remnant.Name))})");
        if (plan.Marker.Placements.IsEmpty)
            return $"{plan.Cloth.Name}: nothing to buy";
        Purchase purchase = plan.Purchase;
        string width = LengthWords.Tape(plan.Cloth.Width, system);
        string cost = purchase.Cost is { } amount
            ? string.Create(CultureInfo.InvariantCulture, $"; cost {amount:0.00} {purchase.Currency}").TrimEnd()
            : "";
        return $"{plan.Cloth.Name}: buy {purchase.Text} ({purchase.OtherText}) of cloth {width} wide{cost}";
    }

    private static string HowToLay(ClothPlan plan, MeasureSystem system)
    {
        string spread = LayWords.Instruction(plan.Marker.Surface, system);
        string nap = plan.Cloth.Nap switch
        {
            Nap.OneWay => "; every piece the same way up",
            Nap.BySize => "; all pieces of one size the same way up",
            _ => "",
        };
        return $"  {spread}{nap}";
    }

    private static string HowItLies(ClothPlan plan, MeasureSystem system)
    {
        string length = LengthWords.Tape(plan.Marker.LayLength, system);
        string used = (100 * plan.Marker.EfficiencyRatio).ToString("0.0", CultureInfo.InvariantCulture);
        return $"  the lay is {length} long; {used} % of its cloth is used";
    }

    private static void WriteFiles(TextWriter writer, WrittenFiles written)
    {
        writer.WriteLine($"Written to {written.Folder}: {string.Join(", ", written.Names)}");
        writer.WriteLine("Look first at guide.pdf, which shows where each piece lies; then print marker.pdf at 100 % and measure its test squares.");
    }
}
