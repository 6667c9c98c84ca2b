using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>Why a piece cannot lie on a cloth, and what would help: every such sentence. Titles are piece and size as people read them.</summary>
internal static class FitReasons
{
    /// <summary>A count that two layers cannot give.</summary>
    public static string SingleOnFolded(Piece piece, string title) => piece.Cut.Count == 1
        ? $"{title} is cut once, and on folded cloth a single piece would come out twice; lay the cloth open, or cut 2."
        : $"{title} is cut {piece.Cut}, and folded cloth gives two at a time; lay the cloth open, or cut an even number.";

    /// <summary>A half piece on a lay of two layers without a fold.</summary>
    public static string NoFoldFor(Piece piece, string title) =>
        $"{title} is cut {piece.Cut}, and two lengths laid on each other have no fold; opened out it would come out twice. Fold the cloth lengthwise, lay it open, or use a mixed lay.";

    /// <summary>A piece with a direction on cloth that is folded across.</summary>
    public static string NapOnCrosswise(string title) =>
        $"{title} has a direction, and on cloth folded across the nap of the upper layer runs the other way; cut along the fold and turn the upper layer end for end (lay: crosswise turned), or fold the cloth lengthwise.";

    /// <summary>More halves than a fold across the cloth is long.</summary>
    public static string CrosswiseFoldFull(string title) =>
        $"{title} finds no more room on the fold, which is only as long as the cloth is wide; lay the cloth open or fold it lengthwise.";

    /// <summary>A half piece whose grain no fold of the lay can follow.</summary>
    public static string GrainOnFold(Piece piece, string title)
    {
        string grain = piece.Grain switch
        {
            GrainRule.Bias => "at 45 degrees to it",
            GrainRule.Across => "across it",
            _ => "along the cloth, not along this fold",
        };
        string fold = piece.Grain is GrainRule.Bias or GrainRule.Across ? "the lengthwise fold" : "the fold";
        return $"{title} lies on {fold} but wants its grain {grain}; lay the cloth open, where it is cut unfolded.";
    }

    /// <summary>A piece that is deeper than the lay, whichever way it lies.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="surface">How it is spread.</param>
    /// <param name="form">The piece as laid.</param>
    /// <param name="title">Piece and size.</param>
    /// <param name="depth">Its least extent across the cloth over every allowed turn.</param>
    /// <param name="wording">How lengths are written.</param>
    public static string TooDeep(Cloth cloth, LaySurface surface, CopyForm form, string title, Length depth, LayWording wording)
    {
        Length room = RoomFor(surface, form);
        string what = $"{title} is {wording.AtLeast(depth)} deep, {NameOf(surface, form)} only {wording.AtMost(room)}";
        if (surface.Form == LayForm.Remnants)
            return what + ".";
        if (surface.Form == LayForm.PartialFold && form.Layers == 2 && depth * 2 < surface.UsableWidth)
            return $"{what}; it fits where the cloth is folded at least {wording.AtLeast(depth)} deep.";
        string width = WiderCloth(cloth.FullWidthFor(depth * (int)Math.Round(surface.UsableWidth.TotalMillimeters / room.TotalMillimeters)), wording);
        bool openHelps = surface.HasTwoLayers && form.Contact == FoldContact.Free && depth <= surface.UsableWidth && surface.Form != LayForm.Tubular;
        return openHelps ? $"{what}; it fits on this cloth laid open, or {width}" : $"{what}; it fits {width}";
    }

    private static Length RoomFor(LaySurface surface, CopyForm form) => form.Contact == FoldContact.OnFold
        ? surface.Folds.Max(fold => CleanDepth(surface, surface.Bands[fold.Band], form))
        : surface.Bands.Where(band => band.Layers == form.Layers).Max(band => CleanDepth(surface, band, form));

    private static Length CleanDepth(LaySurface surface, LayBand band, CopyForm form)
    {
        if (form.Piece.Flaws == FlawTolerance.Anywhere)
            return band.Depth;
        long shaded = surface.Shades.Where(strip => strip.Low >= band.Low && strip.High <= band.High).Distinct().Sum(strip => (strip.High - strip.Low).Micrometers);
        return band.Depth - Length.FromMicrometers(shaded);
    }

    private static string NameOf(LaySurface surface, CopyForm form) => (surface.Form, form.Layers) switch
    {
        (LayForm.Folded, _) => "the folded lay",
        (LayForm.PartialFold, 2) => "the folded part",
        (LayForm.PartialFold, _) => "the single part",
        (LayForm.DoubleFold, _) => "each half of the double fold",
        (LayForm.Tubular, _) => "the tube",
        (LayForm.Remnants, _) => "the deepest leftover",
        _ => "the cloth",
    };

    private static string WiderCloth(Length needed, LayWording wording)
    {
        string least = wording.AtLeast(needed);
        Length usual = wording.WidthsOnSale.FirstOrDefault(width => width >= needed);
        if (usual == Length.Zero)
            return $"on cloth at least {least} wide, which is more than is usual: divide the piece with a seam.";
        string sold = wording.AtLeast(usual);
        return sold == least ? $"on cloth at least {least} wide." : $"on cloth at least {least} wide (usual: {sold}).";
    }
}
