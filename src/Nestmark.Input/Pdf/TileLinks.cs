using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>Which pages go on in which, under one guess: a page's lines on one side are those of exactly one other page on the opposite side.</summary>
internal sealed class TileLinks
{
    private readonly ImmutableArray<ImmutableArray<RunOff>> _ends;

    private TileLinks(TileGuess guess, ImmutableArray<ImmutableArray<RunOff>> ends)
    {
        _ends = ends;
        Guess = guess;
        Right = [.. Enumerable.Range(0, ends.Length).Select(page => Next(page, TileSide.Right, TileSide.Left))];
        Above = [.. Enumerable.Range(0, ends.Length).Select(page => Next(page, TileSide.Top, TileSide.Bottom))];
        Meeting = Enumerable.Range(0, ends.Length).Sum(page => (Right[page] is null ? 0 : On(page, TileSide.Right).Length) + (Above[page] is null ? 0 : On(page, TileSide.Top).Length));
        Loose = [.. Enumerable.Range(0, ends.Length).Where(page => LooseSides(page).Any())];
    }

    public TileGuess Guess { get; }

    /// <summary>The page to the right of each page, by index; <c>null</c> for none.</summary>
    public ImmutableArray<int?> Right { get; }

    /// <summary>The page above each page.</summary>
    public ImmutableArray<int?> Above { get; }

    /// <summary>How many lines go on across a join.</summary>
    public int Meeting { get; }

    /// <summary>Pages with lines that run off a side where no single page goes on.</summary>
    public ImmutableArray<int> Loose { get; }

    public static TileLinks Of(TileGuess guess, ImmutableArray<PdfSheet> pages) =>
        new(guess, [.. pages.Select(page => TileSides.Of(page, guess.Own))]);

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
        [.. Enumerable.Range(0, _ends.Length).Where(other => other != page && TileSides.Meet(ends, On(other, opposite)))];

    private IEnumerable<TileSide> LooseSides(int page)
    {
        foreach (TileSide side in Enum.GetValues<TileSide>())
        {
            bool isLinked = side switch
            {
                TileSide.Right => Right[page] is not null,
                TileSide.Top => Above[page] is not null,
                TileSide.Left => Right.Contains(page),
                _ => Above.Contains(page),
            };
            if (!isLinked && On(page, side).Any(end => !end.IsRuled))
                yield return side;
        }
    }
}
