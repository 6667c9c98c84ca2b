using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Pdf;

/// <summary>A line of text and the middle of it, in millimeters from the lowest left of its sheet.</summary>
internal sealed record PdfWords(string Text, CurvePoint Middle);
