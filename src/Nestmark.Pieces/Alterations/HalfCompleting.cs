using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Completes a half piece by its mirror image about the fold edge; it is then cut as copies.</summary>
public static class HalfCompleting
{
    private const double OnFoldMicrometers = 5;
    private static readonly double CornerCosine = Angle.FromDegrees(30).CosineRatio;

    /// <summary>The whole piece.</summary>
    /// <param name="draft">A draft on the fold that can be made into a piece.</param>
    /// <returns>The half keeps its letters and its mirror image has the next free ones; corners on the fold that the whole outline passes without a turn over 30 degrees are gone.</returns>
    public static AlterationResult Apply(PieceDraft draft) => Trying.Once(draft, paper =>
    {
        if (paper.Fold is not { } fold)
            return AlterationFaults.NotOnFold();
        Vector direction = (fold.End - fold.Start).Unit;
        Vector Mirror(Vector place) => place.MirroredAbout(fold.Start, direction);
        bool IsOffFold(Vector place) => Math.Abs(direction.Cross(place - fold.Start)) > OnFoldMicrometers;
        int index = paper.Edges.IndexOf(fold);
        PaperEdge[] half = [.. paper.Edges.Skip(index + 1), .. paper.Edges.Take(index)];
        (List<PaperEdge> edges, int next) = Whole(half, fold, Mirror, paper.NextLetter);
        MergeAt(edges, fold.To);
        MergeAt(edges, fold.From);
        Vector along = direction.Dot(paper.Along) > 0 ? fold.End - fold.Start : fold.Start - fold.End;
        Vector foot = direction.Dot(paper.Along) > 0 ? fold.Start : fold.End;
        int first = Enumerable.Range(0, edges.Count).MinBy(i => CornerLetters.IndexOf(edges[i].From));
        return paper with
        {
            Draft = paper.Draft with { Cut = paper.Draft.Cut with { Kind = CutKind.Copies } },
            Edges = Paper.Closed([.. edges.Skip(first), .. edges.Take(first)]),
            Lines = [.. paper.Lines, .. paper.Lines.Where(line => line.Places.Any(IsOffFold)).Select(line => line with { Places = [.. line.Places.Select(Mirror)] })],
            Marks = [.. paper.Marks, .. paper.Marks.Where(mark => IsOffFold(mark.Place)).Select(mark => mark with { Place = Mirror(mark.Place) })],
            Grainline = paper.Grainline ?? (foot + 0.2 * along, foot + 0.8 * along),
            NextLetter = next,
        };
    });

    private static (List<PaperEdge> Edges, int NextLetter) Whole(PaperEdge[] half, PaperEdge fold, Func<Vector, Vector> mirror, int nextLetter)
    {
        int next = nextLetter;
        Dictionary<string, string> letters = new(StringComparer.Ordinal) { [fold.From] = fold.From, [fold.To] = fold.To };
        List<PaperEdge> edges = [.. half];
        foreach (PaperEdge edge in half.Reverse())
        {
            if (!letters.ContainsKey(edge.From))
                letters.Add(edge.From, CornerLetters.Of(next++));
            edges.Add(edge with
            {
                From = letters[edge.To],
                To = letters[edge.From],
                Points = [.. edge.Points.Reverse().Select(point => Mirrored(point, mirror))],
            });
        }
        return (edges, next);
    }

    /// <summary>A notch on the fold is not doubled.</summary>
    private static PaperPoint Mirrored(PaperPoint point, Func<Vector, Vector> mirror)
    {
        Vector place = mirror(point.Place);
        return (place - point.Place).Norm < 2 * OnFoldMicrometers ? point.Bare : point with { Place = place };
    }

    /// <summary>Makes one edge of the two that meet at a corner without a turn.</summary>
    private static void MergeAt(List<PaperEdge> edges, string corner)
    {
        int after = edges.FindIndex(edge => edge.From == corner);
        int before = (after + edges.Count - 1) % edges.Count;
        if (edges.Count < 3)
            return;
        Vector incoming = (edges[before].End - edges[before].Points[^2].Place).Unit;
        Vector outgoing = (edges[after].Points[1].Place - edges[after].Start).Unit;
        if (incoming.Dot(outgoing) < CornerCosine)
            return;
        PaperPoint middle = edges[after].Points[0] with { IsAdded = true };
        edges[after] = edges[after] with { From = edges[before].From, Points = [.. edges[before].Points.SkipLast(1), middle, .. edges[after].Points.Skip(1)] };
        edges.RemoveAt(before);
    }
}
