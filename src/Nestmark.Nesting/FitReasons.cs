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

    /// <summary>A half piece whose grain the lengthwise fold cannot follow.</summary>
    public static string GrainOnFold(Piece piece, string title)
    {
        string grain = piece.Grain == GrainRule.Bias ? "at 45 degrees to it" : "across it";
        return $"{title} lies on the lengthwise fold but wants its grain {grain}; lay the cloth open, where it is cut unfolded.";
    }

    /// <summary>A piece that is deeper than the lay, whichever way it lies.</summary>
    /// <param name="cloth">The cloth and how it is spread.</param>
    /// <param name="form">The piece as laid.</param>
    /// <param name="title">Piece and size.</param>
    /// <param name="depth">Its least extent across the cloth over every allowed turn.</param>
    /// <param name="wording">How lengths are written.</param>
    public static string TooDeep(Cloth cloth, CopyForm form, string title, Length depth, LayWording wording)
    {
        LaySurface surface = LaySurface.Of(cloth);
        string lay = surface.HasFold ? "the folded lay" : "the cloth";
        string what = $"{title} is {wording.AtLeast(depth)} deep, {lay} only {wording.AtMost(surface.Depth)}";
        string width = WiderCloth(cloth.FullWidthFor(surface.HasFold ? depth * 2 : depth), wording);
        bool openHelps = surface.HasFold && form.Contact == FoldContact.Free && depth <= surface.UsableWidth;
        return openHelps ? $"{what}; it fits on this cloth laid open, or {width}" : $"{what}; it fits {width}";
    }

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
