using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Takes a draft apart for an alteration.</summary>
internal static class PaperReading
{
    private const double NotchReachMicrometers = 3_000;

    /// <exception cref="ArgumentException">The outline encloses nothing.</exception>
    public static Paper Of(PieceDraft draft)
    {
        SeamOutline outline = SeamOutline.Of(draft.Outline, draft.Corners)
            ?? throw new ArgumentException("The outline of a draft to be altered must enclose an area.", nameof(draft));
        int? fold = FoldFinding.Find(draft, outline, []);
        Turn turn = GrainFinding.Find(draft, fold is int index ? outline.Edges[index] : null, []);
        (Vector along, Vector across) = Axes(turn);
        PaperEdge[] edges = [.. outline.Edges.Select((edge, i) => EdgeOf(edge, i == fold, draft))];
        string[] names = [.. edges.Select(edge => edge.Name)];
        foreach (PieceMark notch in draft.Notches)
            SetNotch(edges, notch);
        return new Paper
        {
            Draft = draft with
            {
                Edges = [.. draft.Edges.Where(edge => !names.Contains(edge.From + "-" + edge.To))],
                Notches = [.. draft.Notches.Where(notch => !IsNear(edges, notch))],
            },
            Edges = [.. edges],
            Lines = [.. draft.Lines.Select(line => new PaperLine(line.Label, [.. line.Points.Select(Vector.Of)]))],
            Marks = [.. draft.Marks.Select(mark => new PaperMark(mark.Label, Vector.Of(mark.Place)))],
            Grainline = draft.Grainline is { } grain ? (Vector.Of(grain.Start), Vector.Of(grain.End)) : null,
            Along = along,
            Across = across,
            NextLetter = edges.Max(edge => CornerLetters.IndexOf(edge.From)) + 1,
        };
    }

    private static PaperEdge EdgeOf(OutlineEdge edge, bool isFold, PieceDraft draft)
    {
        EdgeAllowance? own = draft.Edges.FirstOrDefault(allowance => allowance.From == edge.From && allowance.To == edge.To);
        EdgeTraits traits = new(own?.Width, own?.Ends ?? AllowanceEnds.Mitred, isFold ? EdgeKind.Fold : EdgeKind.Cut);
        IEnumerable<Point> points = isFold ? [edge.Points[0], edge.Points[^1]] : edge.Points;
        return new PaperEdge(edge.From, edge.To, [.. points.Select(point => PaperPoint.At(Vector.Of(point)))], traits);
    }

    /// <summary>The directions of the drawing that the turn lays along x and y.</summary>
    private static (Vector Along, Vector Across) Axes(Turn turn)
    {
        double cosine = turn.Angle.CosineRatio;
        double sine = turn.Angle.SineRatio;
        return turn.Facing == Facing.Flipped
            ? (new Vector(cosine, sine), new Vector(sine, -cosine))
            : (new Vector(cosine, -sine), new Vector(sine, cosine));
    }

    private static bool IsNear(PaperEdge[] edges, PieceMark notch) => edges.Min(edge => edge.DistanceMicrometers(Vector.Of(notch.Place))) <= NotchReachMicrometers;

    private static void SetNotch(PaperEdge[] edges, PieceMark notch)
    {
        Vector place = Vector.Of(notch.Place);
        if (!IsNear(edges, notch))
            return;
        int index = Enumerable.Range(0, edges.Length).MinBy(i => edges[i].DistanceMicrometers(place));
        edges[index] = edges[index].WithPoint(place, point => point with { Notches = point.Notches.Add(notch.Label) });
    }
}
