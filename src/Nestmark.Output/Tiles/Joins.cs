using System.Globalization;
using Nestmark.Output.Drawings;

namespace Nestmark.Output.Tiles;

/// <summary>Marks where pages meet: two diamonds on every join, halved by the edge to be cut, with the number of the join on both sides.</summary>
internal static class Joins
{
    private const double HalfDiamond = 4;
    private const double TextSize = 3;
    private static readonly Ink Line = new(0.2, LineStyle.Solid, 0.35);

    /// <summary>All marks of a grid, on the lay; every page prints those that fall on it.</summary>
    public static Drawing Of(TileGrid grid)
    {
        Drawing drawing = new();
        int number = 0;
        foreach (Tile tile in grid.Printed)
        {
            Area own = tile.Own;
            if (grid.PrintedAt(tile.Row, tile.Column + 1) is not null)
            {
                number++;
                foreach (double ratio in (double[])[0.25, 0.75])
                    DrawOne(drawing, new Spot(own.RightMillimeters, own.BottomMillimeters + own.HeightMillimeters * ratio), number);
            }
            if (grid.PrintedAt(tile.Row + 1, tile.Column) is not null)
            {
                number++;
                foreach (double ratio in (double[])[0.25, 0.75])
                    DrawOne(drawing, new Spot(own.LeftMillimeters + own.WidthMillimeters * ratio, own.BottomMillimeters), number);
            }
        }
        return drawing;
    }

    private static void DrawOne(Drawing drawing, Spot at, int number)
    {
        string text = number.ToString(CultureInfo.InvariantCulture);
        Spot[] corners = [at.Moved(HalfDiamond, 0), at.Moved(0, HalfDiamond), at.Moved(-HalfDiamond, 0), at.Moved(0, -HalfDiamond)];
        drawing.Ring(Role.Join, Line, corners);
        drawing.Line(Role.Join, Line, corners[0], corners[2]);
        drawing.Line(Role.Join, Line, corners[1], corners[3]);
        drawing.Text(Role.Join, text, at.Moved(1.2, HalfDiamond - 0.8), TextSize);
        drawing.Text(Role.Join, text, at.Moved(-1.2, -HalfDiamond - 1.2), TextSize, Anchor.End);
    }
}
