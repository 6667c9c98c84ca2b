using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Pdf;

/// <summary>
/// Finds how pages are joined by lines that are drawn whole on several pages, each of which shows a part: the same line twice, moved, tells how far one
/// page lies from the other. Programs that cut a large sheet into pages write them so.
/// </summary>
internal static class TileSharing
{
    private const double SameMillimeters = 0.1;
    private const double OnGridMillimeters = 0.3;
    private const int MostLines = 100;
    private const int FewestVotes = 3;

    /// <summary>How the pages lie; <c>null</c> where too few lines are shared or they contradict each other.</summary>
    /// <param name="pages">Pages of one size that share a window.</param>
    /// <param name="window">What each of them shows.</param>
    public static TileFound? Of(ImmutableArray<PdfSheet> pages, TileCutting window)
    {
        ImmutableArray<(int First, int Second, CurvePoint Move)> moves = [.. Moves(pages, window)];
        (double width, double height) = (window.RightMillimeters - window.LeftMillimeters, window.TopMillimeters - window.BottomMillimeters);
        double? across = Commonest(moves.Where(move => Math.Abs(move.Move.YMillimeters) < SameMillimeters).Select(move => Math.Abs(move.Move.XMillimeters)), width);
        double? up = Commonest(moves.Where(move => Math.Abs(move.Move.XMillimeters) < SameMillimeters).Select(move => Math.Abs(move.Move.YMillimeters)), height);
        if (across is null && up is null)
            return null;
        (double stepX, double stepY) = (across ?? width, up ?? height);
        List<(int First, int Second, int Columns, int Rows)> links = [];
        int meeting = 0;
        foreach (IGrouping<(int First, int Second), (int First, int Second, CurvePoint Move)> pair in moves.GroupBy(move => (move.First, move.Second)))
        {
            (int Columns, int Rows, int Votes)[] places = [.. pair.Select(move => OnGrid(move.Move, stepX, stepY)).OfType<(int Columns, int Rows)>()
                .GroupBy(place => place).Select(group => (group.Key.Columns, group.Key.Rows, group.Count())).OrderByDescending(place => place.Item3)];
            // Two copies of a piece look like one that is shared; what most lines say is taken, and nothing where they are of two minds.
            if (places.Length == 0 || (places.Length > 1 && places[1].Votes == places[0].Votes))
                continue;
            links.Add((pair.Key.First, pair.Key.Second, places[0].Columns, places[0].Rows));
            meeting += places[0].Votes;
        }
        IEnumerable<(int, int, int)> StepsOf(int page) =>
            links.Where(link => link.First == page || link.Second == page)
                .Select(link => link.First == page ? (link.Second, link.Columns, link.Rows) : (link.First, -link.Columns, -link.Rows));
        return TilePlaces.Of(pages.Length, StepsOf) is { } grids
            ? new TileFound(pages, new TileGuess(window, width - stepX, height - stepY), grids, meeting)
            : null;
    }

    /// <summary>For every line that two pages share, how far the second page lies from the first.</summary>
    private static IEnumerable<(int First, int Second, CurvePoint Move)> Moves(ImmutableArray<PdfSheet> pages, TileCutting window)
    {
        SharedLine[][] lines =
        [
            .. pages.Select(page => page.Strokes.Where(stroke => !PdfJoining.IsFrame(stroke, page.WidthMillimeters, page.HeightMillimeters))
                .Select(stroke => SharedLine.Of(stroke.Run)).Where(line => line.GoesBeyond(window)).Distinct().Take(MostLines).ToArray()),
        ];
        for (int first = 0; first < pages.Length; first++)
        {
            for (int second = first + 1; second < pages.Length; second++)
            {
                foreach (SharedLine line in lines[first])
                {
                    foreach (SharedLine other in lines[second].Where(other => line.IsLike(other)))
                        yield return (first, second, line.Start - other.Start);
                }
            }
        }
    }

    private static (int Columns, int Rows)? OnGrid(CurvePoint move, double stepX, double stepY)
    {
        (double columns, double rows) = (Math.Round(move.XMillimeters / stepX), Math.Round(move.YMillimeters / stepY));
        bool isOn = Math.Abs(move.XMillimeters - columns * stepX) <= OnGridMillimeters && Math.Abs(move.YMillimeters - rows * stepY) <= OnGridMillimeters;
        return isOn && (columns != 0 || rows != 0) && Math.Abs(columns) < 1000 && Math.Abs(rows) < 1000 ? ((int)columns, (int)rows) : null;
    }

    /// <summary>The step from a page to the next that most shared lines give: more than half a window, and no more than one.</summary>
    private static double? Commonest(IEnumerable<double> moves, double size)
    {
        double[] sorted = [.. moves.Where(move => move > size / 2 && move <= size + SameMillimeters).Order()];
        (int start, int most) = (0, 0);
        int from = 0;
        for (int to = 0; to < sorted.Length; to++)
        {
            while (sorted[to] - sorted[from] > SameMillimeters)
                from++;
            if (to - from + 1 > most)
                (start, most) = (from, to - from + 1);
        }
        return most >= FewestVotes ? sorted.Skip(start).Take(most).Average() : null;
    }
}
