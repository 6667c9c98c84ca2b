using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>Lays linked pages out in rows and columns, one grid for each group of pages that hang together.</summary>
internal static class TilePlaces
{
    /// <summary>The grids, their entries counted from 1 as the pages are given; <c>null</c> where the links contradict each other.</summary>
    /// <param name="pages">How many pages there are.</param>
    /// <param name="stepsOf">The pages that one hangs together with, by index, and how many columns to the right and rows up each lies.</param>
    public static ImmutableArray<ImmutableArray<ImmutableArray<int>>>? Of(int pages, Func<int, IEnumerable<(int Other, int Columns, int Rows)>> stepsOf)
    {
        HashSet<int> seen = [];
        List<ImmutableArray<ImmutableArray<int>>> grids = [];
        for (int page = 0; page < pages; page++)
        {
            if (seen.Contains(page))
                continue;
            if (Group(page, stepsOf) is not Dictionary<int, (int Column, int Row)> places)
                return null;
            seen.UnionWith(places.Keys);
            grids.Add(Rows(places));
        }
        return [.. grids];
    }

    private static Dictionary<int, (int Column, int Row)>? Group(int first, Func<int, IEnumerable<(int Other, int Columns, int Rows)>> stepsOf)
    {
        Dictionary<int, (int Column, int Row)> places = new() { [first] = (0, 0) };
        Queue<int> open = new([first]);
        while (open.TryDequeue(out int page))
        {
            (int column, int row) = places[page];
            foreach ((int other, int right, int up) in stepsOf(page))
            {
                (int, int) place = (column + right, row + up);
                if (places.TryGetValue(other, out (int, int) known) ? known != place : places.ContainsValue(place))
                    return null;
                if (places.TryAdd(other, place))
                    open.Enqueue(other);
            }
        }
        return places;
    }

    private static ImmutableArray<ImmutableArray<int>> Rows(Dictionary<int, (int Column, int Row)> places)
    {
        Dictionary<(int, int), int> pages = places.ToDictionary(pair => pair.Value, pair => pair.Key + 1);
        (int left, int right) = (places.Values.Min(place => place.Column), places.Values.Max(place => place.Column));
        (int bottom, int top) = (places.Values.Min(place => place.Row), places.Values.Max(place => place.Row));
        return
        [
            .. Enumerable.Range(0, top - bottom + 1).Select(down => (ImmutableArray<int>)
                [.. Enumerable.Range(left, right - left + 1).Select(column => pages.GetValueOrDefault((column, top - down)))]),
        ];
    }
}
