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

    /// <summary>What is left of a page when half of each overlap is taken from either neighbor.</summary>
    public TileCutting Own => new TileGuess(Window, OverlapXMillimeters, OverlapYMillimeters).Own;

    /// <summary>
    /// What the joined sheet takes from a page, so that every place comes from one page: what is left of it, and the overlaps where it has no neighbor.
    /// Where two of these would lie on each other, those above and below win.
    /// </summary>
    public IEnumerable<TileCutting> OwnParts(int row, int column)
    {
        (TileCutting own, TileCutting full) = (Own, Window);
        yield return own;
        if (OverlapXMillimeters <= 0 && OverlapYMillimeters <= 0)
            yield break;
        foreach ((int aside, double left, double right) in new[] { (-1, full.LeftMillimeters, own.LeftMillimeters), (1, own.RightMillimeters, full.RightMillimeters) })
        {
            if (HasPage(row, column + aside))
                continue;
            yield return new TileCutting(
                left, own.BottomMillimeters + (HasPage(row + 1, column + aside) ? OverlapYMillimeters / 2 : 0),
                right, own.TopMillimeters - (HasPage(row - 1, column + aside) ? OverlapYMillimeters / 2 : 0));
            if (!HasPage(row + 1, column) && !HasPage(row + 1, column + aside))
                yield return new TileCutting(left, full.BottomMillimeters, right, own.BottomMillimeters);
            if (!HasPage(row - 1, column) && !HasPage(row - 1, column + aside))
                yield return new TileCutting(left, own.TopMillimeters, right, full.TopMillimeters);
        }
        if (!HasPage(row + 1, column))
            yield return new TileCutting(own.LeftMillimeters, full.BottomMillimeters, own.RightMillimeters, own.BottomMillimeters);
        if (!HasPage(row - 1, column))
            yield return new TileCutting(own.LeftMillimeters, own.TopMillimeters, own.RightMillimeters, full.TopMillimeters);
    }

    /// <summary>Whether there is a page in a row and column, both from 0 at the top left.</summary>
    public bool HasPage(int row, int column) => row >= 0 && row < Pages.Length && column >= 0 && column < Pages[row].Length && Pages[row][column] > 0;

    /// <summary>The grid that a job gives, on pages of a size.</summary>
    public static PdfGrid Of(PdfTiles tiles, double pageWidthMillimeters, double pageHeightMillimeters)
    {
        double trim = tiles.Trim.TotalMillimeters;
        double overlap = tiles.Overlap.TotalMillimeters;
        return new PdfGrid(tiles.Pages, new TileCutting(trim, trim, pageWidthMillimeters - trim, pageHeightMillimeters - trim), overlap, overlap);
    }
}
