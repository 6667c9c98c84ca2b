using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Output.Charts;

/// <summary>A chart in words, the same in every output: blocks, and the reasons of the cells that cannot be cut.</summary>
/// <param name="Blocks">One for each cloth and nap.</param>
/// <param name="Reasons">Numbered from 1; a cell names its reason by the number.</param>
/// <param name="Basis">How the lengths come about, a sentence each.</param>
internal sealed record ChartSheetText(ImmutableArray<ChartBlock> Blocks, ImmutableArray<string> Reasons, ImmutableArray<string> Basis)
{
    private const string Dash = "–";

    /// <summary>The words of a chart.</summary>
    public static ChartSheetText Of(Chart chart)
    {
        List<string> reasons = [];
        ImmutableArray<ChartBlock> blocks =
        [
            .. from cloth in chart.Request.Cloths
               from nap in chart.Request.Naps
               select BlockOf(chart, cloth, nap, reasons),
        ];
        return new ChartSheetText(blocks, [.. reasons], BasisOf(chart));
    }

    /// <summary>Meters to the centimeter at least: "1.70", "0.85", "1.125".</summary>
    public static string Meters(Length length) => (length.Micrometers / 1_000_000m).ToString("0.00#", CultureInfo.InvariantCulture);

    /// <summary>Yards as shops write them: "1 7/8"; a step that is no eighth or third of a yard in inches, with their sign.</summary>
    public static string Yards(Length length)
    {
        string text = LengthWords.ToBuy(length, MeasureSystem.Imperial);
        return text.EndsWith(" yd", StringComparison.Ordinal) ? text[..^3] : text;
    }

    /// <summary>A direction rule in words.</summary>
    public static string NapWords(Nap nap) => nap switch
    {
        Nap.None => "without nap",
        Nap.BySize => "with nap, each size one way",
        _ => "with nap",
    };

    private static ChartBlock BlockOf(Chart chart, string cloth, Nap nap, List<string> reasons)
    {
        MeasureSystem system = chart.Job.System;
        ImmutableArray<ChartRow> rows =
        [
            .. chart.Request.Sizes.Select(size => new ChartRow(
                size.Length == 0 ? "one garment" : size,
                [.. chart.Request.Widths.Select(width => TextOf(chart.Entries.FirstOrDefault(entry => entry.Cell == new ChartCell(cloth, size, nap, width)), reasons))])),
        ];
        string lay = LayWords.Of(chart.Job.Cloths.First(candidate => candidate.Name == cloth).Lay);
        return new ChartBlock($"{cloth}, lay {lay}, {NapWords(nap)}", [.. chart.Request.Widths.Select(width => LengthWords.TapeInBoth(width, system))], rows);
    }

    private static ChartCellText TextOf(ChartEntry? entry, List<string> reasons)
    {
        if (entry is null || entry.IsEmpty)
            return new ChartCellText(Dash, Dash);
        if (entry.CanBeCut)
            return new ChartCellText(Meters(entry.Metric), Yards(entry.Imperial));
        string reason = string.Join(" ", entry.Finding.Unplaced.Select(unplaced => unplaced.Reason));
        int number = reasons.IndexOf(reason) + 1;
        if (number == 0)
        {
            reasons.Add(reason);
            number = reasons.Count;
        }
        return new ChartCellText(ShortReason(entry.Finding.Unplaced), string.Create(CultureInfo.InvariantCulture, $"({number})"));
    }

    private static string ShortReason(ImmutableArray<Unplaced> unplaced) =>
        unplaced.Length == 1 ? $"no: {unplaced[0].Piece}" : string.Create(CultureInfo.InvariantCulture, $"no: {unplaced.Length} pieces");

    private static ImmutableArray<string> BasisOf(Chart chart)
    {
        List<string> sentences = ["Cloth to buy for one garment, in meters and in yards, each rounded up the way it is sold."];
        foreach (Cloth cloth in chart.Request.Cloths.Select(name => chart.Job.Cloths.First(cloth => cloth.Name == name)))
        {
            List<string> parts = [$"selvages of {LengthWords.Tape(cloth.Selvage, chart.Job.System)} kept free", $"{LengthWords.Tape(cloth.Ends, chart.Job.System)} for each cut end"];
            if (cloth.LengthShrinkageRatio > 0 || cloth.WidthShrinkageRatio > 0)
                parts.Add(string.Create(CultureInfo.InvariantCulture, $"shrinkage {cloth.LengthShrinkageRatio * 100:0.#} % in length and {cloth.WidthShrinkageRatio * 100:0.#} % in width"));
            parts.Add($"sold in steps of {LengthWords.Step(cloth.Buying.Step, chart.Job.System)}");
            sentences.Add($"{cloth.Name}: {string.Join(", ", parts)}.");
        }
        return [.. sentences];
    }
}
