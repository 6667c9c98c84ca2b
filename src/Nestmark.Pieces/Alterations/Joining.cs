using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Joins two pieces along an edge of each into one, without the seam between them.</summary>
public static class Joining
{
    private const double FitMicrometers = 1_500;

    /// <summary>The joined piece.</summary>
    /// <param name="draft">Keeps its place, its letters, its grain and all that is said about the piece.</param>
    /// <param name="edge">Its edge, as "A-B".</param>
    /// <param name="other">Is laid against it.</param>
    /// <param name="otherEdge">The other's edge; both have the same length and shape within 1.5 mm.</param>
    /// <returns>The other's corners have the next free letters, but for those at the joined edges.</returns>
    public static AlterationResult Apply(PieceDraft draft, string edge, PieceDraft other, string otherEdge) => Trying.Once(draft, paper =>
    {
        Paper second = PaperReading.Of(other);
        int index = paper.IndexOf(edge);
        int otherIndex = second.IndexOf(otherEdge);
        if (index < 0)
            return AlterationFaults.NoSuchEdge(edge, paper.EdgeNames);
        if (otherIndex < 0)
            return AlterationFaults.NoSuchEdge(otherEdge, second.EdgeNames);
        Paper laid = Laid(paper.Edges[index], second, otherIndex);
        double apart = Apart(paper.Edges[index], laid.Edges[otherIndex]);
        return apart > FitMicrometers
            ? AlterationFaults.EdgesDiffer(paper.Edges[index].Name, laid.Edges[otherIndex].Name, apart / 1000)
            : Joined(paper, index, laid, otherIndex);
    });

    /// <summary>The other piece with its edge against this one, middle on middle.</summary>
    private static Paper Laid(PaperEdge edge, Paper second, int otherIndex)
    {
        PaperEdge otherEdge = second.Edges[otherIndex];
        Vector from = (otherEdge.End - otherEdge.Start).Unit;
        Vector to = (edge.Start - edge.End).Unit;
        double cosine = from.Dot(to);
        double sine = from.Cross(to);
        Vector middle = 0.5 * (otherEdge.Start + otherEdge.End);
        Vector target = 0.5 * (edge.Start + edge.End);
        return second.Mapped(place =>
        {
            Vector arm = place - middle;
            return target + new Vector(cosine * arm.X - sine * arm.Y, sine * arm.X + cosine * arm.Y);
        });
    }

    private static double Apart(PaperEdge edge, PaperEdge laid) => Math.Max(
        Math.Max((edge.Start - laid.End).Norm, (edge.End - laid.Start).Norm),
        Math.Max(edge.Points.Max(point => laid.DistanceMicrometers(point.Place)), laid.Points.Max(point => edge.DistanceMicrometers(point.Place))));

    private static PaperOutcome Joined(Paper paper, int index, Paper laid, int otherIndex)
    {
        PaperEdge edge = paper.Edges[index];
        PaperEdge[] own = [.. paper.Edges.Skip(index + 1), .. paper.Edges.Take(index)];
        PaperEdge[] others = [.. laid.Edges.Skip(otherIndex + 1), .. laid.Edges.Take(otherIndex)];
        int next = paper.NextLetter;
        Dictionary<string, string> letters = new(StringComparer.Ordinal) { [laid.Edges[otherIndex].To] = edge.From, [laid.Edges[otherIndex].From] = edge.To };
        foreach (PaperEdge other in others.Where(other => !letters.ContainsKey(other.From)))
            letters.Add(other.From, CornerLetters.Of(next++));
        others = [.. others.Select(other => other with { From = letters[other.From], To = letters[other.To] })];
        if (others.Length > 0)
            others[0] = others[0] with { Points = others[0].Points.SetItem(0, others[0].Points[0] with { Place = edge.Start }) };
        if (OneFold([.. own, .. others]) is not { } edges)
            return AlterationFaults.FoldsDoNotMeet();
        int first = Enumerable.Range(0, edges.Count).MinBy(i => CornerLetters.IndexOf(edges[i].From));
        return paper with
        {
            Edges = Paper.Closed([.. edges.Skip(first), .. edges.Take(first)]),
            Lines = [.. paper.Lines, .. laid.Lines],
            Marks = [.. paper.Marks, .. laid.Marks],
            NextLetter = next,
        };
    }

    /// <summary>The edges with two folds that run on in one line made one; <c>null</c> where they do not.</summary>
    private static List<PaperEdge>? OneFold(List<PaperEdge> edges)
    {
        if (edges.Count(edge => edge.IsFold) < 2)
            return edges;
        for (int i = 0; i < edges.Count; i++)
        {
            PaperEdge here = edges[i];
            PaperEdge next = edges[(i + 1) % edges.Count];
            if (!here.IsFold || !next.IsFold)
                continue;
            if (Math.Abs((here.End - here.Start).Unit.Cross(next.End - here.Start)) > FitMicrometers)
                return null;
            PaperEdge joined = here with { To = next.To, Points = [here.Points[0], next.Points[^1]] };
            List<PaperEdge> result = [.. edges.Where(edge => edge != next).Select(edge => edge == here ? joined : edge)];
            return result;
        }
        return null;
    }
}
