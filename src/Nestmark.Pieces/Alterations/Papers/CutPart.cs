using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>One of the two parts of a piece that is cut through at a line.</summary>
internal static class CutPart
{
    private const double OnLineMicrometers = 5;
    private const double ShortestArrowMicrometers = 20_000;

    /// <summary>The part on one side; its new edge runs between two corners, whose letters are new where no corner stood on the line.</summary>
    /// <param name="paper">The piece.</param>
    /// <param name="line">Crosses the outline twice.</param>
    /// <param name="side">Moving for the part to the left of the line, still for the other.</param>
    /// <param name="traits">Of the new edge.</param>
    /// <param name="startNumber">0 where the new edge starts at the next free letter, 1 where it ends there: so both parts of a split agree.</param>
    public static PaperOutcome Of(Paper paper, StraightLine line, PaperSide side, EdgeTraits traits, int startNumber)
    {
        HalfParting parting = HalfParting.Open(line, -line.Direction.Right, 0);
        List<(PaperEdge Edge, ImmutableArray<PaperPoint> Points)> runs = [.. paper.Edges.SelectMany(edge => RunsOf(edge, parting, side))];
        if (runs.Count == 0)
            return AlterationFaults.LineMisses();
        int[] ends = [.. Enumerable.Range(0, runs.Count).Where(i => (runs[i].Points[^1].Place - runs[(i + 1) % runs.Count].Points[0].Place).Norm > OnLineMicrometers)];
        if (ends.Length != 1)
            return ends.Length == 0 ? AlterationFaults.LineMisses() : AlterationFaults.CrossesOften(2 * ends.Length);
        runs = [.. runs.Skip(ends[0] + 1), .. runs.Take(ends[0] + 1)];
        string exit = CornerLetters.Of(paper.NextLetter + startNumber);
        string entry = CornerLetters.Of(paper.NextLetter + 1 - startNumber);
        return Assembled(paper, runs, Letter(runs[0], entry), LetterAtEnd(runs[^1], exit), traits) with
        {
            Lines = [.. paper.Lines.SelectMany(drawn => Clipped(drawn, parting, side))],
            Marks = [.. paper.Marks.Where(mark => parting.SideOf(mark.Place) == side)],
            Grainline = Arrow(paper, runs, parting, side),
            NextLetter = paper.NextLetter + 2,
        };
    }

    private static IEnumerable<(PaperEdge Edge, ImmutableArray<PaperPoint> Points)> RunsOf(PaperEdge edge, HalfParting parting, PaperSide side)
    {
        List<PaperPoint> run = [];
        foreach ((PaperPoint point, PaperSide pointSide) in parting.Parted(edge))
        {
            bool belongs = pointSide == side || Math.Abs(parting.Cuts[0].SideOf(point.Place)) <= OnLineMicrometers;
            if (belongs && (run.Count == 0 || run[^1].Place != point.Place))
                run.Add(point);
            if (!belongs && run.Count > 0)
            {
                if (IsRun(run, parting))
                    yield return (edge, [.. run]);
                run = [];
            }
        }
        if (IsRun(run, parting))
            yield return (edge, [.. run]);
    }

    /// <summary>Two points or more, and not only along the line itself.</summary>
    private static bool IsRun(List<PaperPoint> run, HalfParting parting) =>
        run.Count > 1 && run.Exists(point => Math.Abs(parting.Cuts[0].SideOf(point.Place)) > OnLineMicrometers);

    private static string Letter((PaperEdge Edge, ImmutableArray<PaperPoint> Points) run, string fresh) =>
        (run.Points[0].Place - run.Edge.Start).Norm <= OnLineMicrometers ? run.Edge.From : fresh;

    private static string LetterAtEnd((PaperEdge Edge, ImmutableArray<PaperPoint> Points) run, string fresh) =>
        (run.Points[^1].Place - run.Edge.End).Norm <= OnLineMicrometers ? run.Edge.To : fresh;

    private static Paper Assembled(
        Paper paper, List<(PaperEdge Edge, ImmutableArray<PaperPoint> Points)> runs, string entry, string exit, EdgeTraits traits)
    {
        List<PaperEdge> edges =
        [
            .. runs.Select((run, i) => run.Edge with
            {
                From = i == 0 ? entry : run.Edge.From,
                To = i == runs.Count - 1 ? exit : run.Edge.To,
                Points = run.Points,
            }),
            new PaperEdge(exit, entry, [runs[^1].Points[^1].Bare, runs[0].Points[0].Bare], traits),
        ];
        // The corner that comes first in the letters comes first again.
        int first = Enumerable.Range(0, edges.Count).MinBy(i => CornerLetters.IndexOf(edges[i].From));
        return paper with { Edges = Paper.Closed([.. edges.Skip(first), .. edges.Take(first)]) };
    }

    private static IEnumerable<PaperLine> Clipped(PaperLine line, HalfParting parting, PaperSide side)
    {
        List<Vector> kept = [];
        for (int i = 0; i + 1 < line.Places.Length; i++)
        {
            (Vector start, Vector end) = (line.Places[i], line.Places[i + 1]);
            double before = parting.Cuts[0].SideOf(start);
            double after = parting.Cuts[0].SideOf(end);
            Vector crossing = before * after < 0 ? start + before / (before - after) * (end - start) : end;
            foreach ((Vector from, Vector to) in before * after < 0 ? [(start, crossing), (crossing, end)] : new[] { (start, end) })
            {
                if (parting.SideOf(0.5 * (from + to)) == side)
                    kept.AddRange(kept.Count == 0 || kept[^1] != from ? [from, to] : [to]);
            }
        }
        return kept.Count > 1 ? [line with { Places = [.. kept] }] : [];
    }

    /// <summary>What is left of the arrow; a new one the same way where little is left.</summary>
    private static (Vector, Vector)? Arrow(
        Paper paper, List<(PaperEdge Edge, ImmutableArray<PaperPoint> Points)> runs, HalfParting parting, PaperSide side)
    {
        if (paper.Grainline is not var (start, end))
            return null;
        PaperLine[] left = [.. Clipped(new PaperLine("", [start, end]), parting, side)];
        if (left is [{ Places: [var from, .., var to] }] && (to - from).Norm >= ShortestArrowMicrometers)
            return (from, to);
        Vector[] places = [.. runs.SelectMany(run => run.Points).Select(point => point.Place)];
        double least = places.Min(place => place.Dot(paper.Along));
        double most = places.Max(place => place.Dot(paper.Along));
        double across = (places.Min(place => place.Dot(paper.Across)) + places.Max(place => place.Dot(paper.Across))) / 2;
        Vector At(double share) => (least + share * (most - least)) * paper.Along + across * paper.Across;
        return (At(0.25), At(0.75));
    }
}
