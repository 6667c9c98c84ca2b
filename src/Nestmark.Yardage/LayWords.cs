using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>The words for forms of lay, in job files, reports and sentences.</summary>
public static class LayWords
{
    private static readonly (LayForm Form, string Word)[] Words =
    [
        (LayForm.Open, "open"), (LayForm.Folded, "folded"), (LayForm.PartialFold, "partial fold"), (LayForm.DoubleFold, "double fold"),
        (LayForm.CrosswiseFold, "crosswise fold"), (LayForm.CrosswiseTurned, "crosswise turned"), (LayForm.Tubular, "tubular"),
        (LayForm.Mixed, "mixed"), (LayForm.Best, "best"),
    ];

    /// <summary>The word of a form, as job files and reports have it.</summary>
    public static string Of(LayForm form) => Words.First(pair => pair.Form == form).Word;

    /// <summary>Every word with its form.</summary>
    public static IReadOnlyList<(LayForm Form, string Word)> All => Words;

    /// <summary>How the cloth is spread, a phrase: "folded lengthwise, right sides together".</summary>
    /// <param name="surface">The lay.</param>
    /// <param name="system">Units first in texts.</param>
    public static string Phrase(LaySurface surface, MeasureSystem system) => surface.Form switch
    {
        LayForm.Open => "open, one layer, right side up",
        LayForm.Folded => "folded lengthwise, right sides together",
        LayForm.PartialFold => $"folded over lengthwise {LengthWords.Tape(surface.Bands[0].Depth, system)} deep, right sides together, the rest in one layer",
        LayForm.DoubleFold => "both selvages folded in to the middle, right sides together",
        LayForm.CrosswiseFold => "folded across, cut ends together, right sides together",
        LayForm.CrosswiseTurned => "two lengths laid right sides together, the upper one turned end for end so that the nap runs alike",
        LayForm.Tubular => "a tube as it lies, two layers",
        _ => $"folded lengthwise for the first {LengthWords.Tape(FoldedLength(surface), system)}, the rest open in one layer",
    };

    /// <summary>What to do with the cloth, beginning with a verb: "fold it lengthwise, right sides together, selvages together".</summary>
    /// <param name="surface">The lay.</param>
    /// <param name="system">Units first in texts.</param>
    public static string Instruction(LaySurface surface, MeasureSystem system) => surface.Form switch
    {
        LayForm.Open => "lay it open, one layer",
        LayForm.Folded => "fold it lengthwise, right sides together, selvages together",
        LayForm.PartialFold => $"fold one selvage over, right sides together, so that the folded part is {LengthWords.Tape(surface.Bands[0].Depth, system)} deep; the rest lies in one layer",
        LayForm.DoubleFold => "fold both selvages in to meet in the middle, right sides together",
        LayForm.CrosswiseFold => "fold it across, cut ends together, right sides together",
        LayForm.CrosswiseTurned => "fold it across, right sides together, cut along the fold and turn the upper layer end for end, so that the nap of both runs alike",
        LayForm.Tubular => "lay the tube flat, its folds straight",
        _ => $"fold the first {LengthWords.Tape(FoldedLength(surface), system)} lengthwise, right sides together; cut across there and lay the rest open, one layer",
    };

    private static Length FoldedLength(LaySurface surface) => surface.Bands[0].To.GetValueOrDefault();
}
