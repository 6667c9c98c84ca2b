namespace Nestmark.Input.Pdf;

/// <summary>Which lines of a PDF count: by layer, color and dash; <c>null</c> takes all.</summary>
internal sealed record PdfSelection(PdfWanted? Layer, PdfWanted? Color, PdfWanted? Dash)
{
    /// <summary>Every line, of layers that are shown.</summary>
    public static PdfSelection Everything { get; } = new(null, null, null);

    /// <summary>Whether sizes are told apart by it.</summary>
    public bool IsBySize => Layer is { IsBySize: true } || Color is { IsBySize: true } || Dash is { IsBySize: true };

    /// <summary>Whether a stroke counts for a size. A wanted thing that the size has no text for matches nothing.</summary>
    public bool Takes(PdfStroke stroke, string size) =>
        (Layer is null ? !stroke.IsHidden : Layer.For(size) is string layer && stroke.Layers.Any(one => Same(one, layer)))
        && (Color is null || (Color.For(size) is string color && Same(stroke.Color, PdfColors.Normal(color))))
        && (Dash is null || (Dash.For(size) is string dash && Same(stroke.Dash, dash)));

    private static bool Same(string left, string right) => string.Equals(left.Trim(), right.Trim(), StringComparison.OrdinalIgnoreCase);
}
