using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Pdf;

/// <summary>Joins printed pages to one sheet by their place in the grid, as one does with trimmed paper.</summary>
internal static class PdfJoining
{
    private const double FrameRatio = 0.8;
    private const int MostJoinsTold = 5;
    private const double SameSizeMillimeters = 0.5;

    /// <summary>The joined sheet; <c>null</c> after an error.</summary>
    /// <param name="pages">The tiles in their order, perhaps with other pages behind.</param>
    /// <param name="tiles">The grid.</param>
    /// <param name="error">Gets what is wrong.</param>
    /// <param name="note">Gets where lines do not meet.</param>
    public static PdfSheet? Join(ImmutableArray<PdfSheet> pages, PdfTiles tiles, Action<Fault> error, Action<Fault> note)
    {
        pages = [.. pages.Take(tiles.InOrder.Count())];
        if (pages.IsEmpty)
            return null;
        PdfGrid grid = PdfGrid.Of(tiles, pages[0].WidthMillimeters, pages[0].HeightMillimeters);
        int odd = pages.ToList().FindIndex(page => !IsSameSize(page, pages[0]));
        Fault? fault = odd >= 0 ? PdfFaults.PageSizes(tiles.InOrder.ElementAt(odd))
            : grid.StepXMillimeters <= grid.OverlapXMillimeters || grid.StepYMillimeters <= grid.OverlapYMillimeters ? PdfFaults.TrimTooWide()
            : null;
        if (fault is not null)
        {
            error(fault);
            return null;
        }
        string[] apart = [.. TileApart.Of(pages, grid)];
        if (apart.Length > 0)
            note(PdfFaults.JoinsApart(string.Join("; ", apart.Take(MostJoinsTold)), apart.Length - MostJoinsTold));
        return Joined(pages, grid, "the joined pages");
    }

    /// <summary>The joined sheet.</summary>
    /// <param name="pages">The pages of the grid, row by row.</param>
    /// <param name="grid">Where they lie.</param>
    /// <param name="name">What the sheet is called.</param>
    public static PdfSheet Joined(ImmutableArray<PdfSheet> pages, PdfGrid grid, string name)
    {
        (double width, double height) = (pages[0].WidthMillimeters, pages[0].HeightMillimeters);
        TileCutting full = grid.Window;
        int rows = grid.Pages.Length;
        int columns = grid.Pages.Max(row => row.Length);
        List<PdfStroke> strokes = [];
        List<PdfWords> words = [];
        int next = 0;
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < grid.Pages[row].Length; column++)
            {
                if (grid.Pages[row][column] == 0)
                    continue;
                PdfSheet page = pages[next++];
                ImmutableArray<TileCutting> windows = [.. grid.OwnParts(row, column)];
                AffineMap move = AffineMap.Shift(column * grid.StepXMillimeters - full.LeftMillimeters, (rows - 1 - row) * grid.StepYMillimeters - full.BottomMillimeters);
                strokes.AddRange(page.Strokes.Where(stroke => !IsFrame(stroke, width, height))
                    .SelectMany(stroke => windows.SelectMany(window => window.Inside(stroke.Run)).Select(run => stroke with { Run = run.Mapped(move) })));
                words.AddRange(page.Words.Where(line => windows.Any(window => window.Holds(line.Middle))).Select(line => line with { Middle = move.Apply(line.Middle) }));
            }
        }
        return new PdfSheet(
            name, columns * grid.StepXMillimeters + grid.OverlapXMillimeters, rows * grid.StepYMillimeters + grid.OverlapYMillimeters,
            [.. strokes], [.. words], [.. pages.SelectMany(page => page.LeftOut)]);
    }

    /// <summary>Whether two pages can be tiles of one sheet.</summary>
    public static bool IsSameSize(PdfSheet one, PdfSheet other) =>
        Math.Abs(one.WidthMillimeters - other.WidthMillimeters) <= SameSizeMillimeters && Math.Abs(one.HeightMillimeters - other.HeightMillimeters) <= SameSizeMillimeters;

    /// <summary>A rectangle nearly as large as the page: the border of a tile.</summary>
    public static bool IsFrame(PdfStroke stroke, double width, double height) =>
        DrawnBox.UprightRectangle(stroke.Run) is (double boxWidth, double boxHeight) && boxWidth >= FrameRatio * width && boxHeight >= FrameRatio * height;
}
