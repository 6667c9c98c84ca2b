using Nestmark.Output.Drawings;

namespace Nestmark.Output.Pdf;

/// <summary>One page of a PDF file.</summary>
/// <param name="Name">The page's name in the reader's list of pages.</param>
/// <param name="WidthMillimeters">Width of the paper.</param>
/// <param name="HeightMillimeters">Height of the paper.</param>
/// <param name="Picture">What is printed; the origin is the lowest left corner of the paper.</param>
internal sealed record PdfSheet(string Name, double WidthMillimeters, double HeightMillimeters, Drawing Picture);
