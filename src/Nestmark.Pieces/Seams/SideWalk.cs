using System.Collections.Immutable;

namespace Nestmark.Pieces.Seams;

/// <summary>One side of a seam as found on its pieces.</summary>
public sealed class SideWalk
{
    private SideWalk(ImmutableArray<SeamTerm> terms, ImmutableArray<EdgeRun?> runs)
    {
        Terms = terms;
        Runs = runs;
        LengthMillimeters = terms.Select((_, i) => LengthOf(i)).Sum();
        HasNotches = terms.All(term => term.IsRun && term.Times == 1);
        Notches = HasNotches ? [.. Enumerable.Range(0, terms.Length).SelectMany(NotchesOf)] : [];
    }

    /// <summary>Its parts.</summary>
    public ImmutableArray<SeamTerm> Terms { get; }

    /// <summary>The run of each part; <c>null</c> for a plain length.</summary>
    public ImmutableArray<EdgeRun?> Runs { get; }

    /// <summary>Length of all parts along the seam line.</summary>
    public double LengthMillimeters { get; }

    /// <summary>Whether its notches can be compared: every part is walked once.</summary>
    public bool HasNotches { get; }

    /// <summary>All notches, counted from the start of the side.</summary>
    public ImmutableArray<NotchAlong> Notches { get; }

    /// <summary>What is compared, as "front.B-C (half)".</summary>
    public string Text => string.Join(" + ", Terms.Select((term, i) => Runs[i] is { IsOfHalf: true } && term.Times == 1 ? term.Text + " (half)" : term.Text));

    /// <summary>The side on its pieces, or <c>null</c> when a piece or an edge is not there.</summary>
    /// <param name="terms">One or more.</param>
    /// <param name="find">The piece of a name in the size that is walked.</param>
    public static SideWalk? Of(ImmutableArray<SeamTerm> terms, Func<string, Piece?> find)
    {
        ImmutableArray<EdgeRun?> runs = [.. terms.Select(term => term.IsRun && find(term.Piece) is { } piece ? EdgeRun.Find(piece, term.Corners) : null)];
        return terms.Where((term, i) => term.IsRun && runs[i] is null).Any() ? null : new SideWalk(terms, runs);
    }

    /// <summary>How far along the side a zone's end lies, kept within the side; <c>null</c> when there is no such notch.</summary>
    public double? AlongMillimeters(ZoneEnd end)
    {
        if (end.Notch.Length > 0)
            return Notches.FirstOrDefault(notch => notch.Name == end.Notch)?.AlongMillimeters;
        if (end.Number > 0)
            return end.Number <= Notches.Length ? Notches[end.Number - 1].AlongMillimeters : null;
        return Math.Clamp(end.Distance.TotalMillimeters, 0, LengthMillimeters);
    }

    /// <summary>The run at a distance from the start of the side, and the distance on that run; <c>null</c> on a plain length or a run that counts several times.</summary>
    public (EdgeRun Run, double AlongMillimeters)? At(double alongMillimeters)
    {
        double walked = 0;
        for (int i = 0; i < Terms.Length; i++)
        {
            double length = LengthOf(i);
            if (alongMillimeters <= walked + length || i == Terms.Length - 1)
                return Runs[i] is { } run && Terms[i].Times == 1 ? (run, alongMillimeters - walked) : null;
            walked += length;
        }
        return null;
    }

    private double LengthOf(int index) => Terms[index].Times * (Runs[index]?.LengthMillimeters ?? Terms[index].Plain.TotalMillimeters);

    private IEnumerable<NotchAlong> NotchesOf(int index)
    {
        double walked = Enumerable.Range(0, index).Sum(LengthOf);
        return Runs[index]!.Notches.Select(notch => notch with { AlongMillimeters = walked + notch.AlongMillimeters });
    }
}
