using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>Finds neighbors in a grid of pages whose lines do not go on in each other.</summary>
internal static class TileApart
{
    /// <summary>The neighbors in words, "page 2 and page 3"; none where all lines meet.</summary>
    /// <param name="pages">The pages of the grid, row by row.</param>
    /// <param name="grid">Where they lie.</param>
    public static IEnumerable<string> Of(ImmutableArray<PdfSheet> pages, PdfGrid grid)
    {
        Dictionary<(int Row, int Column), PdfSheet> places = [];
        for (int row = 0; row < grid.Pages.Length; row++)
        {
            for (int column = 0; column < grid.Pages[row].Length; column++)
            {
                if (grid.HasPage(row, column))
                    places.Add((row, column), pages[places.Count]);
            }
        }
        foreach (((int row, int column), PdfSheet page) in places.OrderBy(place => place.Key))
        {
            ImmutableArray<RunOff> ends = TileSides.Of(page, grid.Own);
            if (places.TryGetValue((row, column + 1), out PdfSheet? right) && !Meet(ends, TileSide.Right, TileSides.Of(right, grid.Own), TileSide.Left))
                yield return $"{page.Name} and {right.Name}";
            if (places.TryGetValue((row + 1, column), out PdfSheet? below) && !Meet(ends, TileSide.Bottom, TileSides.Of(below, grid.Own), TileSide.Top))
                yield return $"{page.Name} and {below.Name}";
        }
    }

    private static bool Meet(ImmutableArray<RunOff> ends, TileSide side, ImmutableArray<RunOff> others, TileSide opposite) =>
        TileSides.Meeting([.. ends.Where(end => end.Side == side)], [.. others.Where(end => end.Side == opposite)]) is not null;
}
