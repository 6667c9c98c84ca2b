using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Output.Words;

namespace Nestmark.Output.Tiles;

/// <summary>The first page of a cloth's marker: test squares, how to join the pages, and which page is where.</summary>
internal static class PageMap
{
    private const double Width = 190;
    private const double BodySize = 3.2;

    /// <summary>Draws it.</summary>
    /// <param name="lay">The cloth's lay.</param>
    /// <param name="grid">Its pages.</param>
    /// <param name="paper">What is printed on.</param>
    /// <param name="heading">Garment and cloth.</param>
    /// <param name="names">The name of each printed page, in order.</param>
    public static PdfSheet Draw(TrueSizeLay lay, TileGrid grid, Paper paper, MapHeading heading, ImmutableArray<string> names)
    {
        bool isRoll = paper.Height is null;
        double pageWidth = isRoll ? Width + 2 * TileGrid.Margin : paper.Width.TotalMillimeters;
        double pageHeight = paper.Height?.TotalMillimeters ?? paper.Width.TotalMillimeters;
        Drawing page = new();
        double top = pageHeight - TileGrid.Margin;
        TextColumn column = new(page, TileGrid.Margin, top, Width);
        column.Write(heading.Garment, 6.5, FontWeight.Bold);
        column.Write(heading.Cloth, BodySize);
        column.Skip(2);
        column.Write("Print at 100 % (“actual size”), never “fit to page”. Measure a square before you print the rest.", 3.8, FontWeight.Bold);
        column.Skip(3);
        Spot right = TestSquares.Draw(page, new Spot(TileGrid.Margin, column.YMillimeters));
        TextColumn notes = new(page, right.XMillimeters + 8, column.YMillimeters, TileGrid.Margin + Width - right.XMillimeters - 8);
        WriteJoining(notes, grid);
        double below = Math.Min(notes.YMillimeters, right.YMillimeters - TestSquares.ImperialSide) - 5;
        double bottom = Math.Max(TileGrid.Margin + 30, below - 400);
        double mapBottom = DrawMap(page, lay, grid, new Area(TileGrid.Margin, bottom, TileGrid.Margin + Width, below), names);
        WriteCautions(new TextColumn(page, TileGrid.Margin, mapBottom - 4, Width), heading);
        return new PdfSheet(heading.PageName, pageWidth, pageHeight, page);
    }

    private static void WriteJoining(TextColumn notes, TileGrid grid)
    {
        notes.Write("How to join the pages", 3.8, FontWeight.Bold);
        notes.Skip(0.8);
        if (grid.Printed.Length == 1)
        {
            notes.WritePoint("The whole marker is on one page: there is nothing to join.", BodySize);
            return;
        }
        notes.WritePoint("Cut the edge at the left and at the top where it says so; leave the others.", BodySize);
        notes.WritePoint("Lay the cut edge on the dashed line of its neighbor: two halves make one diamond, with the same number on both sides.", BodySize);
        notes.WritePoint("Join each row from left to right: A1, A2, …", BodySize);
        notes.WritePoint("Then join the rows from the top down: A, B, …", BodySize);
        notes.WritePoint("Measure again along the grain arrow of a long piece.", BodySize);
        if (grid.Printed.Length < grid.Tiles.Length)
            notes.WritePoint("Gray places in the map hold no piece and are not printed.", BodySize);
    }

    private static double DrawMap(Drawing page, TrueSizeLay lay, TileGrid grid, Area room, ImmutableArray<string> names)
    {
        Area all = grid.Tiles.Select(tile => tile.Shown).Aggregate((left, right) => left.Including(right));
        double scale = Math.Min(room.WidthMillimeters / all.WidthMillimeters, room.HeightMillimeters / all.HeightMillimeters);
        Frame frame = new(scale, new Spot(
            room.LeftMillimeters - all.LeftMillimeters * scale, room.TopMillimeters - all.TopMillimeters * scale));
        foreach (Tile tile in grid.Tiles.Except(grid.Printed))
            page.Fill(Role.Frame, 0.82, OnMap(frame, tile.Own).Corners);
        foreach (TrueSizePiece piece in lay.Pieces)
            page.Add(new PathFigure(Role.CuttingLine, piece.Laid.CuttingRings(frame), PathEnds.Closed, new Ink(0.2), null));
        foreach (Tile tile in grid.Tiles)
            page.Ring(Role.Frame, new Ink(0.25), OnMap(frame, tile.Own).Corners);
        for (int i = 0; i < names.Length; i++)
            DrawName(page, OnMap(frame, grid.Printed[i].Own), names[i]);
        return frame.Of(0, all.BottomMillimeters).YMillimeters;
    }

    private static void DrawName(Drawing page, Area cell, string name)
    {
        double widthAtOne = new TextLine(name, 1, FontWeight.Bold).WidthMillimeters;
        double size = Math.Min(Math.Min(7, cell.HeightMillimeters * 0.5), cell.WidthMillimeters * 0.85 / widthAtOne);
        Spot at = cell.Center.Moved(0, -size * PrintFont.CapitalHeightRatio / 2);
        page.Add(new TextFigure(Role.Frame, name, at, size, Anchor.Middle, FontWeight.Bold, Angle.Zero, 0.45));
    }

    private static Area OnMap(Frame frame, Area area)
    {
        Spot low = frame.Of(area.LeftMillimeters, area.BottomMillimeters);
        Spot high = frame.Of(area.RightMillimeters, area.TopMillimeters);
        return new Area(low.XMillimeters, low.YMillimeters, high.XMillimeters, high.YMillimeters);
    }

    private static void WriteCautions(TextColumn column, MapHeading heading)
    {
        column.Write(heading.Pages, BodySize);
        column.Write(Cautions.ForPaper, BodySize);
        if (heading.MissingLetters.Length > 0)
            column.Write(heading.MissingLetters, BodySize);
    }
}
