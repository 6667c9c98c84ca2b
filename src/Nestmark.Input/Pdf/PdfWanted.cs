using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>A wanted layer, color or dash.</summary>
/// <param name="Text">For every size; "{size}" in it stands for the size. Empty where sizes have their own.</param>
/// <param name="BySize">Sizes with texts of their own.</param>
internal sealed record PdfWanted(string Text, ImmutableArray<(string Size, string Text)> BySize)
{
    /// <summary>Whether it differs from size to size.</summary>
    public bool IsBySize => BySize.Length > 0 || Text.Contains("{size}", StringComparison.Ordinal);

    /// <summary>The text for a size; <c>null</c> for a size that it does not name.</summary>
    public string? For(string size) => BySize.Length == 0
        ? Text.Replace("{size}", size, StringComparison.Ordinal)
        : BySize.Where(pair => pair.Size == size).Select(pair => pair.Text).FirstOrDefault();
}
