using Nestmark.Output.Fonts;

namespace Nestmark.Output.Drawings;

/// <summary>Text that must stay within a width.</summary>
internal static class FittedText
{
    /// <summary>The text, cut off with three dots where it would be too wide.</summary>
    public static string Cut(string text, double sizeMillimeters, FontWeight weight, double widthMillimeters)
    {
        string kept = CleanText.OneLine(text);
        if (Fits(kept))
            return kept;
        while (kept.Length > 0 && !Fits(kept + "…"))
            kept = kept[..^(kept.Length > 1 && char.IsLowSurrogate(kept[^1]) ? 2 : 1)];
        return kept + "…";

        bool Fits(string some) => new TextLine(some, sizeMillimeters, weight).WidthMillimeters <= widthMillimeters;
    }
}
