using System.Collections.Immutable;
using Nestmark.Output.Drawings;
using Nestmark.Output.Lays;

namespace Nestmark.Output.Tiles;

/// <summary>How a marker is cut up into pages.</summary>
/// <param name="PageWidthMillimeters">Width of the paper as it lies.</param>
/// <param name="PageHeightMillimeters">Height of the paper as it lies.</param>
/// <param name="Tiles">All pages of the grid, row by row.</param>
/// <param name="Printed">Those that a piece touches, in the same order.</param>
internal sealed record TileGrid(
    double PageWidthMillimeters, double PageHeightMillimeters, ImmutableArray<Tile> Tiles, ImmutableArray<Tile> Printed)
{
    /// <summary>Kept free at every edge of the paper: printers cannot reach it. Trade reference 10.</summary>
    public const double Margin = 10;

    /// <summary>What a page shows of the next page to the right and below. Trade reference 10.</summary>
    public const double Overlap = 10;

    /// <summary>Longest side of a page: 14,400 units of 1/72 in. ISO 32000-1, annex C.</summary>
    public const double LongestPage = 5080;

    // Room around the pieces, so that no cutting line lies on the edge of a page.
    private const double Around = 3;

    // The grid may lie a little higher or lower, further left or right, and miss a few pages: parts of the room left over.
    private static readonly double[] Shifts = [0, 0.2, 0.4, 0.6, 0.8, 1];

    /// <summary>The grid of fewest pages for a lay that holds at least one piece.</summary>
    public static TileGrid For(TrueSizeLay lay, Paper paper)
    {
        Area area = lay.Bounds.Grown(Around);
        double width = paper.Width.TotalMillimeters;
        if (paper.Height is not Geometry.Length height)
            return Best(lay, area, Math.Min(LongestPage, area.WidthMillimeters + 2 * Margin), width);
        TileGrid upright = Best(lay, area, width, height.TotalMillimeters);
        TileGrid across = Best(lay, area, height.TotalMillimeters, width);
        return across.Printed.Length < upright.Printed.Length ? across : upright;
    }

    /// <summary>How many pages it takes to cover a length.</summary>
    /// <param name="lengthMillimeters">The length.</param>
    /// <param name="shownMillimeters">What one page shows of it, above the overlap.</param>
    public static int PagesFor(double lengthMillimeters, double shownMillimeters) =>
        Math.Max(1, (int)Math.Ceiling((lengthMillimeters - Overlap) / (shownMillimeters - Overlap) - 1e-9));

    /// <summary>The printed page in a row and column, or <c>null</c>.</summary>
    public Tile? PrintedAt(int row, int column) => Printed.FirstOrDefault(tile => tile.Row == row && tile.Column == column);

    private static TileGrid Best(TrueSizeLay lay, Area area, double pageWidth, double pageHeight)
    {
        double slackX = CoveredBy(PagesFor(area.WidthMillimeters, pageWidth - 2 * Margin), pageWidth) - area.WidthMillimeters;
        double slackY = CoveredBy(PagesFor(area.HeightMillimeters, pageHeight - 2 * Margin), pageHeight) - area.HeightMillimeters;
        return Shifts
            .SelectMany(down => Shifts.Select(left => Of(lay, area, new Spot(-left * slackX, -down * slackY), pageWidth, pageHeight)))
            .MinBy(grid => grid.Printed.Length)!;
    }

    private static double CoveredBy(int pages, double page) => pages * (page - 2 * Margin - Overlap) + Overlap;

    private static TileGrid Of(TrueSizeLay lay, Area area, Spot shift, double pageWidth, double pageHeight)
    {
        double shownWidth = pageWidth - 2 * Margin;
        double shownHeight = pageHeight - 2 * Margin;
        int columns = PagesFor(area.WidthMillimeters, shownWidth);
        int rows = PagesFor(area.HeightMillimeters, shownHeight);
        double start = area.LeftMillimeters + shift.XMillimeters;
        double top = area.BottomMillimeters + shift.YMillimeters + CoveredBy(rows, pageHeight);
        List<Tile> tiles = [];
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                double left = start + column * (shownWidth - Overlap);
                double upper = top - row * (shownHeight - Overlap);
                Area shown = new(left, upper - shownHeight, left + shownWidth, upper);
                double right = column == columns - 1 ? shown.RightMillimeters : shown.RightMillimeters - Overlap;
                double lower = row == rows - 1 ? shown.BottomMillimeters : shown.BottomMillimeters + Overlap;
                tiles.Add(new Tile(row, column, shown, new Area(left, lower, right, upper)));
            }
        }
        return new TileGrid(pageWidth, pageHeight, [.. tiles], [.. tiles.Where(tile => lay.Pieces.Any(piece => Touches(piece, tile.Own)))]);
    }

    private static bool Touches(TrueSizePiece piece, Area area)
    {
        if (!piece.Bounds.Touches(area))
            return false;
        return piece.Edges.Any(edge => ShapeTests.Meets(area, edge.Start, edge.End)) || ShapeTests.IsInside(piece.Edges.AsSpan(), area.Center);
    }
}
