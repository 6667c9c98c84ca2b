using PdfSharp.Fonts;

namespace Nestmark.Output.Fonts;

/// <summary>Hands the print font to the PDF library, whatever family is asked for.</summary>
internal sealed class PrintFontResolver : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>Makes sure that the library uses this resolver; it keeps one for the whole process.</summary>
    public static void Install()
    {
        lock (Gate)
            GlobalFontSettings.FontResolver ??= new PrintFontResolver();
    }

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(isBold ? "bold" : "regular", mustSimulateBold: false, mustSimulateItalic: false);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => PrintFont.Of(faceName == "bold" ? FontWeight.Bold : FontWeight.Regular).File;
}
