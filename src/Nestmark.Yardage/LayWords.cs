using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>The words for forms of lay, in job files, reports and sentences.</summary>
public static class LayWords
{
    private static readonly (LayForm Form, string Word)[] Words =
    [
        (LayForm.Open, "open"), (LayForm.Folded, "folded"), (LayForm.PartialFold, "partial fold"), (LayForm.DoubleFold, "double fold"),
        (LayForm.CrosswiseFold, "crosswise fold"), (LayForm.CrosswiseTurned, "crosswise turned"), (LayForm.Tubular, "tubular"),
        (LayForm.Mixed, "mixed"), (LayForm.Best, "best"), (LayForm.Remnants, "leftovers"),
    ];

    /// <summary>The word of a form, as job files and reports have it.</summary>
    public static string Of(LayForm form) => Words.First(pair => pair.Form == form).Word;

    /// <summary>Every word that a job file may use, with its form.</summary>
    public static IReadOnlyList<(LayForm Form, string Word)> All { get; } = [.. Words.Where(pair => pair.Form != LayForm.Remnants)];

    /// <summary>How the cloth is spread, a phrase: "folded lengthwise, right sides together".</summary>
    /// <param name="surface">The lay.</param>
    /// <param name="system">Units first in texts.</param>
    public static string Phrase(LaySurface surface, MeasureSystem system) => surface.Form switch
    {
        LayForm.Open => "open, one layer, right side up",
        LayForm.Folded => "folded lengthwise, right sides together",
        LayForm.PartialFold => $"folded over lengthwise {LengthWords.Tape(surface.Bands[0].Depth, system)} deep without the selvage, right sides together, the rest in one layer",
        LayForm.DoubleFold => $"both selvages folded in to the middle, right sides together, {LengthWords.Tape(surface.Depth, system)} from fold to fold",
        LayForm.CrosswiseFold => "folded across, cut ends together, right sides together",
        LayForm.CrosswiseTurned => "two lengths laid right sides together, the upper one turned end for end so that the nap runs alike",
        LayForm.Tubular => "a tube as it lies, two layers",
        LayForm.Remnants => "leftovers, one layer, right side up",
        _ => $"folded lengthwise for the first {LengthWords.Tape(FoldedLength(surface), system)}, the rest open in one layer",
    };

    /// <summary>What to do with the cloth, beginning with a verb: "fold it lengthwise, right sides together, selvages together".</summary>
    /// <param name="surface">The lay.</param>
    /// <param name="system">Units first in texts.</param>
    public static string Instruction(LaySurface surface, MeasureSystem system) => surface.Form switch
    {
        LayForm.Open => "lay it open, one layer",
        LayForm.Folded => "fold it lengthwise, right sides together, selvages together",
        LayForm.PartialFold => $"fold one selvage over, right sides together, so that the folded part is {LengthWords.Tape(surface.Bands[0].Depth, system)} deep without the selvage; the rest lies in one layer",
        LayForm.DoubleFold => $"fold both selvages in to the middle, right sides together, so that it is {LengthWords.Tape(surface.Depth, system)} from fold to fold; only the selvages themselves overlap there",
        LayForm.CrosswiseFold => "fold it across, cut ends together, right sides together",
        LayForm.CrosswiseTurned => "fold it across, right sides together, cut along the fold and turn the upper layer end for end, so that the nap of both runs alike",
        LayForm.Tubular => "lay the tube flat, its folds straight",
        LayForm.Remnants => "lay each leftover right side up",
        _ => $"fold the first {LengthWords.Tape(FoldedLength(surface), system)} lengthwise, right sides together; cut across there and lay the rest open, one layer",
    };

    /// <summary>What a lay of another form needs: "open 1.80 m, 14 pieces to lay".</summary>
    /// <param name="marker">A complete marker.</param>
    /// <param name="system">Units in texts.</param>
    public static string Need(Marker marker, MeasureSystem system)
    {
        string depth = marker.Surface.Form == LayForm.PartialFold ? $" {LengthWords.Tape(marker.Surface.Bands[0].Depth, system)} deep" : "";
        int count = marker.Placements.Length;
        string turned = marker.Placements.Count(placement => placement.Turn.Facing == Facing.Flipped) is var over and > 0 ? $", {over} of them turned over" : "";
        return $"{Of(marker.Surface.Form)}{depth} {LengthWords.Tape(marker.ClothLength, system)}, {count} {(count == 1 ? "piece" : "pieces")} to lay{turned}";
    }

    private static Length FoldedLength(LaySurface surface) => surface.Bands[0].To.GetValueOrDefault();
}
