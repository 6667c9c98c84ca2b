using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Makes an alteration and tests it; where it fails, finds the largest amount that passes the same test.</summary>
internal static class Trying
{
    /// <summary>An amount too small to matter: where even this fails, the amount is not what is wrong.</summary>
    private const long LeastMicrometers = 20;

    /// <summary>The altered draft, or the fault with the largest amount that works.</summary>
    /// <param name="draft">Before.</param>
    /// <param name="amount">What is asked for; its sign is kept while it is made smaller.</param>
    /// <param name="make">The alteration by an amount.</param>
    public static AlterationResult With(PieceDraft draft, Length amount, Func<Paper, Length, PaperOutcome> make)
    {
        Paper before = PaperReading.Of(draft);
        PaperOutcome outcome = Tested(before, amount, make);
        if (outcome.Paper is { } after)
            return new AlterationResult(PaperWriting.Of(after), null);
        long sign = Math.Sign(amount.Micrometers);
        long works = LeastMicrometers;
        if (Math.Abs(amount.Micrometers) <= works || Tested(before, Length.FromMicrometers(sign * works), make).Paper is null)
            return new AlterationResult(null, outcome.Fault);
        long fails = Math.Abs(amount.Micrometers);
        while (fails - works > 1)
        {
            long middle = works + (fails - works) / 2;
            if (Tested(before, Length.FromMicrometers(sign * middle), make).Paper is null)
                fails = middle;
            else
                works = middle;
        }
        return new AlterationResult(null, outcome.Fault! with { Largest = Length.FromMicrometers(works) });
    }

    /// <summary>An alteration without an amount.</summary>
    public static AlterationResult Once(PieceDraft draft, Func<Paper, PaperOutcome> make) => With(draft, Length.Zero, (paper, _) => make(paper));

    private static PaperOutcome Tested(Paper before, Length amount, Func<Paper, Length, PaperOutcome> make)
    {
        PaperOutcome outcome = make(before, amount);
        return outcome.Paper is { } after && PaperCheck.Of(before, after) is { } fault ? fault : outcome;
    }
}
