using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;

namespace Nestmark.Output.Tiles;

/// <summary>One page of the full-size marker.</summary>
internal static class TilePage
{
    private static readonly Ink CutEdge = new(0.3, LineStyle.Solid, 0.2);
    private static readonly Ink NextEdge = new(0.2, LineStyle.Dashed, 0.35);

    /// <summary>Draws the page.</summary>
    /// <param name="lay">What is shown.</param>
    /// <param name="picture">The lay and the joins, drawn once for all pages.</param>
    /// <param name="joins">The joins, whose places labels keep off.</param>
    /// <param name="grid">The pages.</param>
    /// <param name="tile">This page.</param>
    /// <param name="words">Its name, and what is printed below it.</param>
    public static PdfSheet Draw(TrueSizeLay lay, Drawing picture, Joins joins, TileGrid grid, Tile tile, TileWords words)
    {
        Spot corner = new(TileGrid.Margin, grid.PageHeightMillimeters - TileGrid.Margin - tile.Shown.HeightMillimeters);
        Spot ruler = RulerPlace(tile, [.. lay.TextAreas, .. joins.Areas]);
        Drawing page = new();
        page.Add(new WindowFigure(BackgroundOf(tile, words, ruler), tile.Shown, corner));
        page.Add(new WindowFigure(picture, tile.Shown, corner));
        page.Add(new WindowFigure(SmallLabels(lay, tile, [.. joins.Areas, TestSquares.BarArea(ruler)]), tile.Shown, corner));
        DrawEdges(page, grid, tile, corner);
        return new PdfSheet(words.Name, grid.PageWidthMillimeters, grid.PageHeightMillimeters, page);
    }

    private static Drawing BackgroundOf(Tile tile, TileWords words, Spot ruler)
    {
        Drawing background = new();
        Spot corner = new(tile.Own.LeftMillimeters + 4, tile.Own.TopMillimeters - 13);
        background.Add(new TextFigure(Role.Frame, words.Name, corner, 12, Anchor.Start, FontWeight.Bold, Angle.Zero, 0.72));
        background.Add(new TextFigure(Role.Frame, words.Below, corner.Moved(0.5, -4.5), 3, Anchor.Start, FontWeight.Regular, Angle.Zero, 0.4));
        TestSquares.DrawBar(background, ruler);
        return background;
    }

    /// <summary>Low on the left; where words or a join are in the way, the next place that is free of them.</summary>
    private static Spot RulerPlace(Tile tile, IReadOnlyList<Area> taken)
    {
        const double Step = 12;
        Area own = tile.Own;
        Spot usual = new(own.LeftMillimeters + 4, own.BottomMillimeters + 17);
        int columns = Math.Max(1, (int)((own.WidthMillimeters - 60) / Step));
        int rows = Math.Max(1, (int)((own.HeightMillimeters - 45) / Step));
        return Enumerable.Range(0, columns * rows)
            .Select(i => usual.Moved(i / rows * Step, i % rows * Step))
            .Where(place => !taken.Any(TestSquares.BarArea(place).Touches))
            .DefaultIfEmpty(usual)
            .First();
    }

    private static Drawing SmallLabels(TrueSizeLay lay, Tile tile, IReadOnlyList<Area> taken)
    {
        Drawing labels = new();
        // On a long page the same piece is named again every so often.
        foreach (Area part in PartsOf(tile.Own))
            foreach (TrueSizePiece piece in lay.Pieces.Where(piece => piece.Bounds.Touches(part)))
                piece.SmallLabelIn(part, taken)?.Draw(labels);
        return labels;
    }

    private static IEnumerable<Area> PartsOf(Area area)
    {
        const double Long = 450;
        int columns = Math.Max(1, (int)(area.WidthMillimeters / Long));
        int rows = Math.Max(1, (int)(area.HeightMillimeters / Long));
        double width = area.WidthMillimeters / columns;
        double height = area.HeightMillimeters / rows;
        for (int column = 0; column < columns; column++)
            for (int row = 0; row < rows; row++)
                yield return new Area(0, 0, width, height).Moved(area.LeftMillimeters + column * width, area.BottomMillimeters + row * height);
    }

    // Edges that go over a neighbor are to be cut: left and top. Where the neighbors' edges come, a dashed line.
    private static void DrawEdges(Drawing page, TileGrid grid, Tile tile, Spot corner)
    {
        Area frame = new Area(0, 0, tile.Shown.WidthMillimeters, tile.Shown.HeightMillimeters).Moved(corner.XMillimeters, corner.YMillimeters);
        page.Ring(Role.Frame, new Ink(0.15, LineStyle.Solid, 0.5), frame.Corners);
        Spot[] corners = frame.Corners;
        if (grid.PrintedAt(tile.Row, tile.Column - 1) is Tile left)
            DrawCutEdge(page, corners[0], corners[3], left, Angle.Quarter);
        if (grid.PrintedAt(tile.Row - 1, tile.Column) is Tile above)
            DrawCutEdge(page, corners[3], corners[2], above, Angle.Zero);
        if (grid.PrintedAt(tile.Row, tile.Column + 1) is not null)
            page.Line(Role.Frame, NextEdge, corners[1].Moved(-TileGrid.Overlap, 0), corners[2].Moved(-TileGrid.Overlap, 0));
        if (grid.PrintedAt(tile.Row + 1, tile.Column) is not null)
            page.Line(Role.Frame, NextEdge, corners[0].Moved(0, TileGrid.Overlap), corners[1].Moved(0, TileGrid.Overlap));
    }

    private static void DrawCutEdge(Drawing page, Spot from, Spot to, Tile neighbor, Angle turn)
    {
        page.Line(Role.Frame, CutEdge, from, to);
        Spot outside = from.Toward(to, 0.5).Moved(turn == Angle.Zero ? 0 : -1.2, turn == Angle.Zero ? 1.2 : 0);
        page.Add(new TextFigure(Role.Frame, $"cut here and lay over {neighbor.Name}", outside, 2.4, Anchor.Middle, FontWeight.Regular, turn, 0.2));
    }
}
