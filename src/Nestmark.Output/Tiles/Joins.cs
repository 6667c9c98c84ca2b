using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Output.Drawings;

namespace Nestmark.Output.Tiles;

/// <summary>Marks where pages meet: two diamonds on every join, halved by the edge to be cut, with the number of the join on both sides.</summary>
/// <param name="Picture">All of them, on the lay; every page prints those that fall on it.</param>
/// <param name="Areas">What they cover.</param>
internal sealed record Joins(Drawing Picture, ImmutableArray<Area> Areas)
{
    // Where along a join the two marks may stand, counted from its ends; the first that are free of words.
    private static readonly double[] Ratios = [0.25, 0.3, 0.2, 0.35, 0.15, 0.4, 0.1];

    private const double HalfDiamond = 4;
    private const double TextSize = 3;
    private static readonly Ink Line = new(0.2, LineStyle.Solid, 0.35);

    /// <summary>The marks of a grid.</summary>
    /// <param name="grid">The pages.</param>
    /// <param name="words">What the words of the lay cover; marks keep off them where they can.</param>
    public static Joins Of(TileGrid grid, IReadOnlyList<Area> words)
    {
        Drawing drawing = new();
        List<Area> areas = [];
        int number = 0;
        foreach (Tile tile in grid.Printed)
        {
            Area own = tile.Own;
            if (grid.PrintedAt(tile.Row, tile.Column + 1) is not null)
            {
                DrawTwo(new Spot(own.RightMillimeters, own.BottomMillimeters), new Spot(own.RightMillimeters, own.TopMillimeters));
            }
            if (grid.PrintedAt(tile.Row + 1, tile.Column) is not null)
            {
                DrawTwo(new Spot(own.LeftMillimeters, own.BottomMillimeters), new Spot(own.RightMillimeters, own.BottomMillimeters));
            }
        }
        return new Joins(drawing, [.. areas]);

        void DrawTwo(Spot start, Spot end)
        {
            number++;
            foreach (Spot at in (Spot[])[Free(start, end, words), Free(end, start, words)])
            {
                DrawOne(drawing, at, number);
                areas.Add(AreaAt(at));
            }
        }
    }

    private static Spot Free(Spot start, Spot end, IReadOnlyList<Area> words)
    {
        IEnumerable<Spot> places = Ratios.Select(ratio => start.Toward(end, ratio));
        return places.Where(at => !words.Any(AreaAt(at).Touches)).DefaultIfEmpty(places.First()).First();
    }

    private static Area AreaAt(Spot at) =>
        new Area(-HalfDiamond - 2, -HalfDiamond - 2, HalfDiamond + 2, HalfDiamond + 2).Moved(at.XMillimeters, at.YMillimeters);

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
