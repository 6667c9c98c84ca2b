using System.Collections.Immutable;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>A drawn line in millimeters from the lowest left of its sheet, y up.</summary>
/// <param name="Page">The page it stands on, from 1.</param>
/// <param name="Run">Its segments.</param>
/// <param name="Layers">Names of the layers it is on, the outermost first.</param>
/// <param name="IsHidden">Whether one of them is switched off in the file.</param>
/// <param name="Color">As "#rrggbb".</param>
/// <param name="Dash">"solid", or the numbers of its dash pattern as the file has them.</param>
internal sealed record PdfStroke(int Page, SubPath Run, ImmutableArray<string> Layers, bool IsHidden, string Color, string Dash)
{
    /// <summary>What it looks like, in words for the user: "layer M, color #d00000, solid".</summary>
    public string Kind => (Layers.Length > 0 ? $"layer {Layers[^1]}, " : "") + $"color {Color}, dash {Dash}";
}
