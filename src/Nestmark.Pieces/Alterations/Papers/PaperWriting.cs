using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Puts an altered piece together again as a draft: corners keep their letters, edges their allowances, the fold its edge.</summary>
internal static class PaperWriting
{
    /// <summary>Points put in for notches and cuts go again where the outline bends less than this: the rounding of places.</summary>
    private const double StraightMicrometers = 1;

    public static PieceDraft Of(Paper paper)
    {
        ImmutableArray<PaperEdge> edges = [.. paper.Edges.Select(Slim)];
        return paper.Draft with
        {
            Outline = [.. edges.SelectMany(VerticesOf)],
            Corners = [.. edges.Select(edge => new PieceCorner(edge.From, edge.Start.Rounded()))],
            Edges = AllowancesOf(edges, paper.Draft.Edges),
            Grainline = paper.Grainline is var (start, end) ? new Segment(start.Rounded(), end.Rounded()) : null,
            FoldLine = null,
            FoldEdge = paper.Fold?.Name ?? "",
            Notches = [.. paper.Edges.SelectMany((edge, i) => NotchesOf(edge, paper.Next(i))), .. paper.Draft.Notches],
            Lines = [.. paper.Lines.Select(line => new PieceLine(line.Label, [.. line.Places.Select(place => place.Rounded())]))],
            Marks = [.. paper.Marks.Select(mark => new PieceMark(mark.Label, mark.Place.Rounded()))],
        };
    }

    private static PaperEdge Slim(PaperEdge edge)
    {
        List<PaperPoint> kept = [edge.Points[0]];
        for (int i = 1; i + 1 < edge.Points.Length; i++)
        {
            if (!edge.Points[i].IsAdded || !IsStraight(kept[^1].Place, edge.Points[i].Place, edge.Points[i + 1].Place))
                kept.Add(edge.Points[i]);
        }
        return edge with { Points = [.. kept, edge.Points[^1]] };
    }

    private static bool IsStraight(Vector before, Vector here, Vector after) =>
        (Nearest.OnSegment(before, after, here) - here).Norm <= StraightMicrometers;

    private static IEnumerable<OutlineVertex> VerticesOf(PaperEdge edge) => edge.Points.SkipLast(1)
        .Select((point, i) => new OutlineVertex(point.Place.Rounded(), i == 0 ? VertexKind.Marked : VertexKind.Curve));

    /// <summary>Notches on an edge; one at a corner stands on whichever edge holds it.</summary>
    private static IEnumerable<PieceMark> NotchesOf(PaperEdge edge, PaperEdge next) =>
        from i in Enumerable.Range(0, edge.Points.Length)
        let place = i == edge.Points.Length - 1 ? next.Start : edge.Points[i].Place
        from notch in edge.Points[i].Notches
        select new PieceMark(notch, place.Rounded());

    /// <summary>Those that the edges carry, and those that name edges which only exist now.</summary>
    private static ImmutableArray<EdgeAllowance> AllowancesOf(ImmutableArray<PaperEdge> edges, ImmutableArray<EdgeAllowance> named) =>
    [
        .. edges.Where(edge => edge.Traits.Width is not null && !named.Any(own => own.From == edge.From && own.To == edge.To))
            .Select(edge => new EdgeAllowance(edge.From, edge.To, edge.Traits.Width!.Value, edge.Traits.Ends)),
        .. named,
    ];
}
