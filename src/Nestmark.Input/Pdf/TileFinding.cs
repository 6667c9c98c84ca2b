using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>
/// Finds by itself how the pages of a pattern are joined: pages of one size whose lines run off a side and go on over the opposite side of exactly
/// one other page. It is certain only when no line is left over and no other way of trimming and overlapping would do as well.
/// </summary>
internal static class TileFinding
{
    private const int MostPages = 100;
    private const int MostSegments = 20_000;
    private const int FewestLines = 3;

    /// <summary>The sheets, pages that belong together joined; the pages as they are where none need joining or it is not certain how.</summary>
    /// <param name="pages">All pages.</param>
    /// <param name="note">Gets what was joined, or why nothing was.</param>
    public static ImmutableArray<PdfSheet> Joined(ImmutableArray<PdfSheet> pages, Action<Fault> note)
    {
        ImmutableArray<PdfSheet> drawn = [.. pages.Where(page => page.Strokes.Length > 0)];
        if (drawn.Length < 2)
            return pages;
        PdfSheet usual = drawn.MaxBy(page => drawn.Count(other => PdfJoining.IsSameSize(page, other)))!;
        ImmutableArray<PdfSheet> alike = [.. drawn.Where(page => PdfJoining.IsSameSize(page, usual))];
        bool isTooMuch = alike.Length > MostPages || alike.Sum(page => page.Strokes.Sum(stroke => stroke.Run.Segments.Length)) > MostSegments;
        if (alike.Length < 2 || isTooMuch)
            return pages;
        TileLinks[] ways = [.. TileGuesses.Of(alike).Select(guess => TileLinks.Of(guess, Tiles(alike, guess))).Where(way => way.Meeting > 0 || !way.Loose.IsEmpty)];
        if (ways.Length == 0)
            return pages;
        TileLinks[] good = [.. ways.Where(way => way.Loose.IsEmpty && way.Meeting >= FewestLines)];
        if (good.Length == 0)
        {
            TileLinks nearest = ways.MaxBy(way => way.Meeting - way.Loose.Length)!;
            if (nearest.Meeting >= FewestLines)
                note(PdfFaults.JoinsNotFound(string.Join(", ", nearest.Loose.Take(10).Select(index => Tiles(alike, nearest.Guess)[index].Name))));
            return pages;
        }
        TileLinks best = good.MaxBy(way => way.Meeting)!;
        if (Array.Exists(good, way => way.Meeting == best.Meeting && !IsSameWay(way.Guess, best.Guess)) || TilePlaces.Of(best) is not { } grids)
        {
            note(PdfFaults.JoinsNotCertain());
            return pages;
        }
        return Sheets(pages, Tiles(alike, best.Guess), best, grids, note);
    }

    /// <summary>The pages that have a window, where a window is drawn or clipped on some of them only.</summary>
    private static ImmutableArray<PdfSheet> Tiles(ImmutableArray<PdfSheet> pages, TileGuess guess)
    {
        ImmutableArray<PdfSheet> framed = [.. pages.Where(page => TileGuesses.HasWindow(page, guess.Window))];
        return framed.Length >= 2 ? framed : pages;
    }

    private static bool IsSameWay(TileGuess one, TileGuess other) =>
        Math.Abs(StepX(one) - StepX(other)) < 0.2 && Math.Abs(StepY(one) - StepY(other)) < 0.2;

    private static double StepX(TileGuess guess) => guess.Window.RightMillimeters - guess.Window.LeftMillimeters - guess.OverlapXMillimeters;

    private static double StepY(TileGuess guess) => guess.Window.TopMillimeters - guess.Window.BottomMillimeters - guess.OverlapYMillimeters;

    private static ImmutableArray<PdfSheet> Sheets(
        ImmutableArray<PdfSheet> pages, ImmutableArray<PdfSheet> tiles, TileLinks links, ImmutableArray<ImmutableArray<ImmutableArray<int>>> grids, Action<Fault> note)
    {
        List<PdfSheet> sheets = [];
        List<string> told = [];
        foreach (ImmutableArray<ImmutableArray<int>> grid in grids)
        {
            PdfSheet[] members = [.. grid.SelectMany(row => row).Where(page => page > 0).Select(page => tiles[page - 1])];
            string names = $"[{string.Join(", ", grid.Select(row => "[" + string.Join(", ", row.Select(page => page == 0 ? "0" : Number(tiles[page - 1]))) + "]"))}]";
            PdfGrid place = new(grid, links.Guess.Window, links.Guess.OverlapXMillimeters, links.Guess.OverlapYMillimeters);
            // A page on its own is cut at its window too: some programs draw everything on every page and show a part.
            sheets.Add(OnSheet(PdfJoining.Joined([.. members], place, members.Length == 1 ? members[0].Name : $"the joined pages {names}")));
            if (members.Length > 1)
                told.Add(names);
        }
        TileGuess guess = links.Guess;
        note(PdfFaults.JoinsFound(string.Join(" and ", told), links.Meeting, guess.Window, guess.OverlapXMillimeters, guess.OverlapYMillimeters));
        return [.. sheets, .. pages.Where(page => page.Strokes.Length > 0 && !tiles.Contains(page))];
    }

    /// <summary>Texts beyond the sheet belong to what other pages show.</summary>
    private static PdfSheet OnSheet(PdfSheet sheet) => sheet with
    {
        Words =
        [
            .. sheet.Words.Where(words => words.Middle.XMillimeters >= 0 && words.Middle.YMillimeters >= 0
                && words.Middle.XMillimeters <= sheet.WidthMillimeters && words.Middle.YMillimeters <= sheet.HeightMillimeters),
        ],
    };

    private static string Number(PdfSheet page) => page.Name[(page.Name.LastIndexOf(' ') + 1)..];
}
