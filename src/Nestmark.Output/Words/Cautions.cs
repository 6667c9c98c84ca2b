using System.Collections.Immutable;

namespace Nestmark.Output.Words;

/// <summary>What to mind when cutting; general words. The one file of them.</summary>
/// <remarks>Trade reference 11 [NQC], [MSM], [SPQ], [4H-UT].</remarks>
internal static class Cautions
{
    /// <summary>For the printed marker.</summary>
    public const string ForPaper =
        "Before you cut cloth: check a square and one long measure on the joined paper; keep each grain arrow along the selvage; count the pieces. "
        + "Blades are sharp: follow the maker’s instructions of your tool.";

    /// <summary>For the guide sheet, one sentence each.</summary>
    public static ImmutableArray<string> ForCutting { get; } =
    [
        "Wash and press the cloth first, as you will wash the garment; lengths here are of washed cloth.",
        "Lay everything out before the first cut, and check each grainline at both ends.",
        "Cut with the hand away from the blade; close a rotary cutter after every cut, and wear closed shoes.",
        "Keep blades and pins from children; pins belong in a box, not in the mouth.",
        "The maker’s instructions of your tool go before anything said here.",
    ];
}
