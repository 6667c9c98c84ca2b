using System.Collections.Immutable;
using System.Globalization;

namespace Nestmark.Input.Pdf;

/// <summary>
/// Finds by itself how the pages of a pattern are joined: pages of one size whose lines run off a side and go on over the opposite side of exactly
/// one other page. It is certain only when no line is left over and no other way of trimming and overlapping would do as well.
/// </summary>
internal static class TileFinding
{
    private const int MostPages = 100;
    private const int MostSegments = 60_000;
    private const int FewestLines = 3;
    private const int MostEndsTold = 6;
    private const int MostPagesNamed = 9;

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
        if (alike.Length < 2)
            return pages;
        int segments = alike.Sum(page => page.Strokes.Sum(stroke => stroke.Run.Segments.Length));
        if (alike.Length > MostPages || segments > MostSegments)
        {
            note(PdfFaults.JoinsTooMany(alike.Length, segments));
            return pages;
        }
        ImmutableArray<TileGuess> guesses = TileGuesses.Of(alike);
        TileLinks[] ways = [.. guesses.Select(guess => TileLinks.Of(guess, Tiles(alike, guess))).Where(way => way.Meeting > 0 || !way.Loose.IsEmpty)];
        if (ways.Length == 0)
            return pages;
        if ((ByEnds(alike, ways, out Fault? doubt) ?? ByWholeLines(alike, guesses)) is TileFound found)
            return Sheets(pages, found, note);
        if (doubt is not null)
            note(doubt);
        return pages;
    }

    /// <summary>How the pages lie by the lines that run off one and go on in another; <c>null</c> where that is not certain.</summary>
    private static TileFound? ByEnds(ImmutableArray<PdfSheet> alike, TileLinks[] ways, out Fault? doubt)
    {
        TileLinks[] good = [.. ways.Where(way => way.Loose.IsEmpty && way.Meeting >= FewestLines)];
        doubt = null;
        if (good.Length == 0)
        {
            TileLinks nearest = ways.MaxBy(way => way.Meeting - way.Loose.Length)!;
            if (nearest.Meeting >= FewestLines)
                doubt = PdfFaults.JoinsNotFound(string.Join(", ", nearest.Loose.Take(MostEndsTold).Select(loose => EndText(Tiles(alike, nearest.Guess)[loose.Page], loose.End))));
            return null;
        }
        TileLinks best = good.MaxBy(way => way.Meeting)!;
        ImmutableArray<PdfSheet> tiles = Tiles(alike, best.Guess);
        if (!Array.Exists(good, way => way.Meeting == best.Meeting && !IsSameWay(way.Guess, best.Guess)) && TilePlaces.Of(tiles.Length, best.StepsOf) is { } grids)
            return new TileFound(tiles, best.Guess, grids, best.Meeting);
        doubt = PdfFaults.JoinsNotCertain();
        return null;
    }

    /// <summary>How the pages lie by the lines that several of them draw whole and show in part; <c>null</c> where they do not tell.</summary>
    private static TileFound? ByWholeLines(ImmutableArray<PdfSheet> alike, ImmutableArray<TileGuess> guesses) =>
        guesses.Select(guess => guess.Window).Distinct().Select(window => TileSharing.Of([.. alike.Where(page => TileGuesses.HasWindow(page, window))], window))
            .OfType<TileFound>().MaxBy(found => found.Meeting);

    private static string EndText(PdfSheet page, RunOff end) => string.Create(CultureInfo.InvariantCulture, $"{page.Name} {end.Side switch
    {
        TileSide.Left => "on the left",
        TileSide.Right => "on the right",
        TileSide.Bottom => "below",
        _ => "above",
    }} at {end.AlongMillimeters:0.#} mm");

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

    private static ImmutableArray<PdfSheet> Sheets(ImmutableArray<PdfSheet> pages, TileFound found, Action<Fault> note)
    {
        (ImmutableArray<PdfSheet> tiles, TileGuess guess) = (found.Tiles, found.Guess);
        List<PdfSheet> sheets = [];
        List<string> told = [];
        foreach (ImmutableArray<ImmutableArray<int>> grid in found.Grids)
        {
            PdfSheet[] members = [.. grid.SelectMany(row => row).Where(page => page > 0).Select(page => tiles[page - 1])];
            string names = $"[{string.Join(", ", grid.Select(row => "[" + string.Join(", ", row.Select(page => page == 0 ? "0" : Number(tiles[page - 1]))) + "]"))}]";
            PdfGrid place = new(grid, guess.Window, guess.OverlapXMillimeters, guess.OverlapYMillimeters);
            // A page on its own is cut at its window too: some programs draw everything on every page and show a part.
            sheets.Add(PdfJoining.Joined([.. members], place, members.Length switch
            {
                1 => members[0].Name,
                <= MostPagesNamed => $"the joined pages {names}",
                _ => string.Create(CultureInfo.InvariantCulture, $"the {members.Length} joined pages from {members[0].Name} on"),
            }));
            if (members.Length > 1)
                told.Add(names);
        }
        note(PdfFaults.JoinsFound(string.Join(" and ", told), found.Meeting, guess.Window, guess.OverlapXMillimeters, guess.OverlapYMillimeters));
        return [.. sheets, .. pages.Where(page => page.Strokes.Length > 0 && !tiles.Contains(page))];
    }

    private static string Number(PdfSheet page) => page.Name[(page.Name.LastIndexOf(' ') + 1)..];
}
