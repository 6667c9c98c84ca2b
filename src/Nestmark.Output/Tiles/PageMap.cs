using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Output.Words;

namespace Nestmark.Output.Tiles;

/// <summary>The first page of a cloth's marker: test squares, how to join the pages, and which page is where.</summary>
internal sealed class PageMap
{
    private const double TextWidth = 190;
    private const double MaximumTextWidth = 280;
    private const double BodySize = 3.2;

    // Room below the map for the closing words, and left of and above it for the arrows.
    private const double WordsRoom = 24;
    private const double ArrowRoom = 6;

    private static readonly Ink PieceLine = new(0.1, LineStyle.Solid, 0.55);
    private static readonly Ink PageLine = new(0.2);
    private static readonly Ink OrderLine = new(0.3, LineStyle.Solid, 0.3);

    private readonly TrueSizeLay _lay;
    private readonly TileGrid _grid;
    private readonly MapHeading _heading;
    private readonly ImmutableArray<string> _names;

    private PageMap(TrueSizeLay lay, TileGrid grid, MapHeading heading, ImmutableArray<string> names) =>
        (_lay, _grid, _heading, _names) = (lay, grid, heading, names);

    /// <summary>Draws it; a sheet lies the way that makes the map larger.</summary>
    /// <param name="lay">The cloth's lay.</param>
    /// <param name="grid">Its pages.</param>
    /// <param name="paper">What is printed on.</param>
    /// <param name="heading">Garment and cloth.</param>
    /// <param name="names">The name of each printed page, in order.</param>
    public static PdfSheet Draw(TrueSizeLay lay, TileGrid grid, Paper paper, MapHeading heading, ImmutableArray<string> names)
    {
        double width = paper.Width.TotalMillimeters;
        PageMap map = new(lay, grid, heading, names);
        if (paper.Height is not Length height)
            return map.SheetOf(TextWidth + 2 * TileGrid.Margin, width).Sheet;
        (PdfSheet upright, double uprightScale) = map.SheetOf(width, height.TotalMillimeters);
        (PdfSheet across, double acrossScale) = map.SheetOf(height.TotalMillimeters, width);
        return acrossScale > uprightScale ? across : upright;
    }

    private (PdfSheet Sheet, double Scale) SheetOf(double pageWidth, double pageHeight)
    {
        Drawing page = new();
        double width = pageWidth - 2 * TileGrid.Margin;
        double top = WriteHead(page, pageHeight - TileGrid.Margin, width);
        double arrows = _grid.Printed.Length > 1 ? ArrowRoom : 0;
        Area room = new(TileGrid.Margin + arrows, TileGrid.Margin + WordsRoom, TileGrid.Margin + width, top - 5 - arrows);
        Frame frame = FrameFor(_grid, room);
        Area map = OnMap(frame, WholeOf(_grid));
        DrawMap(page, frame);
        if (_grid.Printed.Length > 1)
            DrawOrder(page, map);
        WriteCautions(new TextColumn(page, TileGrid.Margin, map.BottomMillimeters - 4, width));
        return (new PdfSheet(_heading.PageName, pageWidth, pageHeight, page), frame.ScaleRatio);
    }

    /// <returns>Where it ends, counted up the page.</returns>
    private double WriteHead(Drawing page, double top, double width)
    {
        TextColumn column = new(page, TileGrid.Margin, top, width);
        column.Write(_heading.Garment, 6.5, FontWeight.Bold);
        column.Write(_heading.Cloth, BodySize);
        column.Skip(2);
        column.Write("Print at 100 % (“actual size”), never “fit to page”. Measure a square before you print the rest.", 3.8, FontWeight.Bold);
        column.Skip(3);
        Spot right = TestSquares.Draw(page, new Spot(TileGrid.Margin, column.YMillimeters));
        double left = right.XMillimeters + 8;
        TextColumn notes = new(page, left, column.YMillimeters, TileGrid.Margin + Math.Min(width, MaximumTextWidth) - left);
        WriteJoining(notes, _grid);
        return Math.Min(notes.YMillimeters, right.YMillimeters - TestSquares.ImperialSide);
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
        notes.WritePoint("First join each row from left to right: A1, A2, …", BodySize);
        notes.WritePoint("Then join the rows from the top down: A, B, …", BodySize);
        if (HasGap(grid))
            notes.WritePoint("A row with a gap stays in parts; the row above or below holds them together.", BodySize);
        notes.WritePoint("Measure again along the grain arrow of a long piece.", BodySize);
        if (grid.Printed.Length < grid.Tiles.Length)
            notes.WritePoint("Gray places in the map hold no piece and are not printed.", BodySize);
    }

    // A gap: pages of a row with none between them.
    private static bool HasGap(TileGrid grid) => grid.Printed
        .GroupBy(tile => tile.Row)
        .Any(row => row.Max(tile => tile.Column) - row.Min(tile => tile.Column) >= row.Count());

    private static Area WholeOf(TileGrid grid) => grid.Tiles.Select(tile => tile.Own).Aggregate((left, right) => left.Including(right));

    private static Frame FrameFor(TileGrid grid, Area room)
    {
        Area all = WholeOf(grid);
        double scale = Math.Min(room.WidthMillimeters / all.WidthMillimeters, room.HeightMillimeters / all.HeightMillimeters);
        return new Frame(scale, new Spot(
            room.LeftMillimeters - all.LeftMillimeters * scale, room.TopMillimeters - all.TopMillimeters * scale));
    }

    private void DrawMap(Drawing page, Frame frame)
    {
        foreach (Tile tile in _grid.Tiles.Except(_grid.Printed))
            page.Fill(Role.Frame, 0.88, OnMap(frame, tile.Own).Corners);
        foreach (TrueSizePiece piece in _lay.Pieces)
            page.Add(new PathFigure(Role.CuttingLine, piece.Laid.CuttingRings(frame), PathEnds.Closed, PieceLine, null));
        foreach (Tile tile in _grid.Tiles)
            page.Ring(Role.Frame, PageLine, OnMap(frame, tile.Own).Corners);
        for (int i = 0; i < _names.Length; i++)
            DrawName(page, OnMap(frame, _grid.Printed[i].Own), _names[i]);
    }

    // On a white plate, so that no outline runs through it.
    private static void DrawName(Drawing page, Area cell, string name)
    {
        double widthAtOne = new TextLine(name, 1, FontWeight.Bold).WidthMillimeters;
        double size = Math.Min(Math.Min(7, cell.HeightMillimeters * 0.5), cell.WidthMillimeters * 0.75 / widthAtOne);
        double capital = size * PrintFont.CapitalHeightRatio;
        Spot at = cell.Center.Moved(0, -capital / 2);
        double half = widthAtOne * size / 2;
        Area plate = new Area(at.XMillimeters - half, at.YMillimeters, at.XMillimeters + half, at.YMillimeters + capital).Grown(size * 0.14);
        page.Fill(Role.Frame, 1, plate.Corners);
        page.Text(Role.Frame, name, at, size, Anchor.Middle, FontWeight.Bold);
    }

    private static void DrawOrder(Drawing page, Area map)
    {
        const double Reach = 40;
        Spot corner = new(map.LeftMillimeters, map.TopMillimeters);
        DrawArrow(page, corner.Moved(0, 2), corner.Moved(Math.Min(Reach, map.WidthMillimeters), 2));
        page.Text(Role.Frame, "first each row", corner.Moved(0, 3.2), 2.4);
        DrawArrow(page, corner.Moved(-2, 0), corner.Moved(-2, -Math.Min(Reach, map.HeightMillimeters)));
        page.Add(new TextFigure(Role.Frame, "then the rows", corner.Moved(-3.2, 0), 2.4, Anchor.End, FontWeight.Regular, Angle.Quarter, 0));
    }

    private static void DrawArrow(Drawing page, Spot from, Spot to)
    {
        page.Line(Role.Frame, OrderLine, from, from.Toward(to, 0.95));
        ArrowHead.Draw(page, Role.Frame, from, to, 2.5);
    }

    private static Area OnMap(Frame frame, Area area)
    {
        Spot low = frame.Of(area.LeftMillimeters, area.BottomMillimeters);
        Spot high = frame.Of(area.RightMillimeters, area.TopMillimeters);
        return new Area(low.XMillimeters, low.YMillimeters, high.XMillimeters, high.YMillimeters);
    }

    private void WriteCautions(TextColumn column)
    {
        column.Write(_heading.Pages, BodySize);
        column.Write(Cautions.ForPaper, BodySize);
        if (_heading.MissingLetters.Length > 0)
            column.Write(_heading.MissingLetters, BodySize);
    }
}
