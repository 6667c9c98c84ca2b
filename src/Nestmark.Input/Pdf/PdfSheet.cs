using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>One page, or several joined pages, in millimeters from the lowest left, y up.</summary>
/// <param name="Name">"page 2", or "the joined pages".</param>
/// <param name="WidthMillimeters">Its width.</param>
/// <param name="HeightMillimeters">Its height.</param>
/// <param name="Strokes">Its lines in drawing order.</param>
/// <param name="Words">Its texts.</param>
/// <param name="LeftOut">What was not understood, in words; empty for nothing.</param>
internal sealed record PdfSheet(
    string Name, double WidthMillimeters, double HeightMillimeters, ImmutableArray<PdfStroke> Strokes, ImmutableArray<PdfWords> Words, ImmutableArray<string> LeftOut)
{
    /// <summary>Upright rectangles to which the page clips what it draws.</summary>
    public ImmutableArray<TileCutting> Clips { get; init; } = [];
}
