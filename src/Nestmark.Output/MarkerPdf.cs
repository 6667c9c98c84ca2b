using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Output.Tiles;
using Nestmark.Output.Words;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The full-size marker as PDF, cut up into pages of the paper at hand: for each cloth a page map, then its pages.</summary>
public static class MarkerPdf
{
    /// <summary>The file's bytes. True size: 1 PDF unit is 1/72 in; print scaling is switched off.</summary>
    /// <remarks>Pages that no piece touches are left out. A cloth without any placement has no pages.</remarks>
    public static byte[] Write(Plan plan, Paper paper)
    {
        ImmutableArray<(TrueSizeLay Lay, TileGrid Grid)> lays =
        [
            .. plan.Cloths.Where(cloth => !cloth.Marker.Placements.IsEmpty)
                .Select(cloth => TrueSizeLay.Of(cloth, plan.Job.Title))
                .Select(lay => (lay, TileGrid.For(lay, paper))),
        ];
        int total = lays.Sum(lay => lay.Grid.Printed.Length + 1);
        List<PdfSheet> sheets = [];
        foreach ((TrueSizeLay lay, TileGrid grid) in lays)
        {
            ImmutableArray<string> names = [.. grid.Printed.Select(tile => plan.Cloths.Length > 1 ? lay.Cloth.Cloth.Name + " " + tile.Name : tile.Name)];
            ImmutableArray<string> shortNames = [.. grid.Printed.Select(tile => tile.Name)];
            sheets.Add(PageMap.Draw(lay, grid, paper, HeadingOf(plan, lay, grid), shortNames));
            Drawing picture = lay.Picture("piece");
            Joins joins = Joins.Of(grid, [.. lay.TextAreas]);
            foreach (Figure figure in joins.Picture.Figures)
                picture.Add(figure);
            for (int i = 0; i < names.Length; i++)
                sheets.Add(TilePage.Draw(lay, picture, joins, grid, grid.Printed[i], WordsOf(plan, lay, names[i], sheets.Count + 1, total)));
        }
        if (sheets.Count == 0)
            sheets.Add(EmptySheet(plan, paper));
        return PdfFile.Write(sheets, plan.Job.Title + " – full-size marker", JobOrigin.Of(plan.Job));
    }

    private static TileWords WordsOf(Plan plan, TrueSizeLay lay, string name, int number, int total) => new(
        name, PieceWords.Joined(
            plan.Job.Title, plan.Cloths.Length > 1 ? "" : lay.Cloth.Cloth.Name,
            string.Create(CultureInfo.InvariantCulture, $"page {number} of {total}")));

    private static MapHeading HeadingOf(Plan plan, TrueSizeLay lay, TileGrid grid)
    {
        string width = LengthWords.TapeInBoth(lay.Cloth.Cloth.Width, plan.Job.System) + " wide";
        string cloth = PieceWords.Joined("Full-size marker", "cloth " + lay.Cloth.Cloth.Name, width, LayWords.Phrase(lay.Cloth.Marker.Surface, plan.Job.System));
        string pages = string.Create(
            CultureInfo.InvariantCulture,
            $"{grid.Printed.Length} {(grid.Printed.Length == 1 ? "page" : "pages")} after this one, each {grid.PageWidthMillimeters:0.#} × {grid.PageHeightMillimeters:0.#} mm.");
        return new MapHeading("Page map " + lay.Cloth.Cloth.Name, plan.Job.Title, cloth, pages, LetterNote.For(plan));
    }

    private static PdfSheet EmptySheet(Plan plan, Paper paper)
    {
        Drawing page = new();
        double width = paper.Width.TotalMillimeters;
        double height = paper.Height?.TotalMillimeters ?? width;
        TextColumn column = new(page, TileGrid.Margin, height - TileGrid.Margin, width - 2 * TileGrid.Margin);
        column.Write(plan.Job.Title, 6.5, FontWeight.Bold);
        column.Write("No piece found a place, so there is nothing to print. The guide sheet gives the reasons.", 3.8);
        return new PdfSheet("Nothing to print", width, height, page);
    }
}
