using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>Which pages go on in which, under one guess: a page's lines on one side are those of exactly one other page on the opposite side.</summary>
internal sealed class TileLinks
{
    private readonly ImmutableArray<ImmutableArray<RunOff>> _ends;

    private TileLinks(TileGuess guess, ImmutableArray<PdfSheet> pages)
    {
        _ends = [.. pages.Select(page => TileSides.Of(page, guess.Own))];
        Guess = guess;
        Right = [.. Enumerable.Range(0, pages.Length).Select(page => Next(page, TileSide.Right, TileSide.Left))];
        Above = [.. Enumerable.Range(0, pages.Length).Select(page => Next(page, TileSide.Top, TileSide.Bottom))];
        Meeting = Enumerable.Range(0, pages.Length).Sum(page => Across(page, Right[page], TileSide.Right, TileSide.Left) + Across(page, Above[page], TileSide.Top, TileSide.Bottom));
        Loose = [.. Enumerable.Range(0, pages.Length).SelectMany(page => LooseOn(pages[page], page).Select(end => (page, end)))];
    }

    public TileGuess Guess { get; }

    /// <summary>The page to the right of each page, by index; <c>null</c> for none.</summary>
    public ImmutableArray<int?> Right { get; }

    /// <summary>The page above each page.</summary>
    public ImmutableArray<int?> Above { get; }

    /// <summary>How many lines go on across a join.</summary>
    public int Meeting { get; }

    /// <summary>Lines that run off a side where no single page goes on, with their pages by index.</summary>
    public ImmutableArray<(int Page, RunOff End)> Loose { get; }

    public static TileLinks Of(TileGuess guess, ImmutableArray<PdfSheet> pages) => new(guess, pages);

    /// <summary>The neighbors of a page, and how many columns to the right and rows up they lie.</summary>
    public IEnumerable<(int Other, int Columns, int Rows)> StepsOf(int page)
    {
        foreach ((int? next, int right, int up) in new[] { (Right[page], 1, 0), (Above[page], 0, 1), (Before(Right, page), -1, 0), (Before(Above, page), 0, -1) })
        {
            if (next is int other)
                yield return (other, right, up);
        }
    }

    private static int? Before(ImmutableArray<int?> next, int page) => next.IndexOf(page) is >= 0 and int index ? index : null;

    private ImmutableArray<RunOff> On(int page, TileSide side) => [.. _ends[page].Where(end => end.Side == side)];

    /// <summary>The only page that goes on there, if this one is also the only one before it.</summary>
    private int? Next(int page, TileSide side, TileSide opposite)
    {
        ImmutableArray<RunOff> ends = On(page, side);
        if (ends.All(end => end.IsRuled))
            return null;
        int[] after = Partners(page, ends, opposite);
        return after.Length == 1 && Partners(after[0], On(after[0], opposite), side) is [int only] && only == page ? after[0] : null;
    }

    private int[] Partners(int page, ImmutableArray<RunOff> ends, TileSide opposite) =>
        [.. Enumerable.Range(0, _ends.Length).Where(other => other != page && TileSides.Meeting(ends, On(other, opposite)) is not null)];

    private int Across(int page, int? next, TileSide side, TileSide opposite) =>
        next is int other ? TileSides.Meeting(On(page, side), On(other, opposite)) ?? 0 : 0;

    /// <summary>The lines that run off a side without a neighbor, both with and without half of the overlap there: an overlap shows a little of the neighbor's lines, and pieces may reach into it.</summary>
    private IEnumerable<RunOff> LooseOn(PdfSheet sheet, int page)
    {
        (TileCutting full, TileCutting own) = (Guess.Window, Guess.Own);
        (bool left, bool right, bool below, bool above) = (Right.Contains(page), Right[page] is not null, Above.Contains(page), Above[page] is not null);
        TileCutting window = new(
            left ? own.LeftMillimeters : full.LeftMillimeters, below ? own.BottomMillimeters : full.BottomMillimeters,
            right ? own.RightMillimeters : full.RightMillimeters, above ? own.TopMillimeters : full.TopMillimeters);
        return TileSides.Of(sheet, window).Where(end => !end.IsRuled && On(page, end.Side).Any(own => !own.IsRuled) && !(end.Side switch
        {
            TileSide.Left => left,
            TileSide.Right => right,
            TileSide.Bottom => below,
            _ => above,
        }));
    }
}
