using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>Pages that are joined to one sheet by their place.</summary>
/// <param name="Pages">Page numbers in rows, the top row first; 0 where there is no page.</param>
/// <param name="Window">What is left of a page after trimming.</param>
/// <param name="OverlapXMillimeters">By how much neighbors in a row lie on each other after trimming.</param>
/// <param name="OverlapYMillimeters">By how much neighbors in a column do.</param>
internal sealed record PdfGrid(ImmutableArray<ImmutableArray<int>> Pages, TileCutting Window, double OverlapXMillimeters, double OverlapYMillimeters)
{
    /// <summary>From a page to the next in its row.</summary>
    public double StepXMillimeters => Window.RightMillimeters - Window.LeftMillimeters - OverlapXMillimeters;

    /// <summary>From a page to the next in its column.</summary>
    public double StepYMillimeters => Window.TopMillimeters - Window.BottomMillimeters - OverlapYMillimeters;

    /// <summary>The grid that a job gives, on pages of a size.</summary>
    public static PdfGrid Of(PdfTiles tiles, double pageWidthMillimeters, double pageHeightMillimeters)
    {
        double trim = tiles.Trim.TotalMillimeters;
        double overlap = tiles.Overlap.TotalMillimeters;
        return new PdfGrid(tiles.Pages, new TileCutting(trim, trim, pageWidthMillimeters - trim, pageHeightMillimeters - trim), overlap, overlap);
    }
}
