using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Pdf;

/// <summary>Joins printed pages to one sheet by their place in the grid, as one does with trimmed paper.</summary>
internal static class PdfJoining
{
    private const double FrameRatio = 0.8;
    private const double SameSizeMillimeters = 0.5;

    /// <summary>The joined sheet; <c>null</c> after an error.</summary>
    /// <param name="pages">The tiles in their order, perhaps with other pages behind.</param>
    /// <param name="tiles">The grid.</param>
    /// <param name="error">Gets what is wrong.</param>
    public static PdfSheet? Join(ImmutableArray<PdfSheet> pages, PdfTiles tiles, Action<Fault> error)
    {
        pages = [.. pages.Take(tiles.InOrder.Count())];
        if (pages.IsEmpty)
            return null;
        (double width, double height) = (pages[0].WidthMillimeters, pages[0].HeightMillimeters);
        int odd = pages.ToList().FindIndex(page => Math.Abs(page.WidthMillimeters - width) > SameSizeMillimeters || Math.Abs(page.HeightMillimeters - height) > SameSizeMillimeters);
        double trim = tiles.Trim.TotalMillimeters;
        double overlap = tiles.Overlap.TotalMillimeters;
        double stepX = width - 2 * trim - overlap;
        double stepY = height - 2 * trim - overlap;
        Fault? fault = odd >= 0 ? PdfFaults.PageSizes(tiles.InOrder.ElementAt(odd))
            : stepX <= overlap || stepY <= overlap ? PdfFaults.TrimTooWide()
            : null;
        if (fault is not null)
        {
            error(fault);
            return null;
        }
        int rows = tiles.Pages.Length;
        int columns = tiles.Pages.Max(row => row.Length);
        List<PdfStroke> strokes = [];
        List<PdfWords> words = [];
        int next = 0;
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < tiles.Pages[row].Length; column++)
            {
                if (tiles.Pages[row][column] == 0)
                    continue;
                PdfSheet page = pages[next++];
                // Half of the overlap is taken from either neighbor, so that nothing is there twice.
                TileCutting window = new(
                    trim + (column > 0 ? overlap / 2 : 0), trim + (row < rows - 1 ? overlap / 2 : 0),
                    width - trim - (column < columns - 1 ? overlap / 2 : 0), height - trim - (row > 0 ? overlap / 2 : 0));
                AffineMap move = AffineMap.Shift(column * stepX - trim, (rows - 1 - row) * stepY - trim);
                strokes.AddRange(page.Strokes.Where(stroke => !IsFrame(stroke, width, height))
                    .SelectMany(stroke => window.Inside(stroke.Run).Select(run => stroke with { Run = run.Mapped(move) })));
                words.AddRange(page.Words.Select(line => line with { Middle = move.Apply(line.Middle) }));
            }
        }
        return new PdfSheet(
            "the joined pages", columns * stepX + overlap, rows * stepY + overlap, [.. strokes], [.. words], [.. pages.SelectMany(page => page.LeftOut)]);
    }

    /// <summary>A rectangle nearly as large as the page: the border of a tile.</summary>
    private static bool IsFrame(PdfStroke stroke, double width, double height) =>
        DrawnBox.UprightRectangle(stroke.Run) is (double boxWidth, double boxHeight) && boxWidth >= FrameRatio * width && boxHeight >= FrameRatio * height;
}
