using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Cuts a piece apart, moves one part, and draws the crossed edges anew.</summary>
internal static class Parting
{
    private const double SamePlaceMicrometers = 1;
    private const double OnLineMicrometers = 5;

    /// <summary>The piece after the cut; or the fault of a corner that would be taken out, or of a cut past the end.</summary>
    public static PaperOutcome Of(Paper paper, IParting parting, SideTruing truing)
    {
        ImmutableArray<(PaperPoint Point, PaperSide Side)>[] parted = [.. paper.Edges.Select(parting.Parted)];
        int gap = Array.FindIndex(parted, points => points[0].Side == PaperSide.Gap);
        if (gap >= 0)
            return AlterationFaults.CornerTakenOut(paper.Edges[gap].From);
        if (!parted.Any(points => points.Any(point => point.Side == PaperSide.Moving)))
            return AlterationFaults.NothingBeyond();
        PaperEdge[] edges = [.. paper.Edges.Select((edge, i) => Altered(edge, parted[i], parting, truing))];
        Slide(edges, paper, parted, parting);
        return paper with
        {
            Edges = Paper.Closed(edges),
            Lines = [.. paper.Lines.Select(line => line with { Places = LineParting.Of(line.Places, parting) }).Where(line => line.Places.Length > 1)],
            Marks = [.. paper.Marks.Select(mark => mark with { Place = LineParting.PlaceOf(mark.Place, parting) })],
            Grainline = paper.Grainline is var (start, end) ? Grainline(start, end, parting) : null,
        };
    }

    private static PaperEdge Altered(PaperEdge edge, ImmutableArray<(PaperPoint Point, PaperSide Side)> parted, IParting parting, SideTruing truing)
    {
        PaperSide start = parted[0].Side;
        PaperSide end = parted[^1].Side;
        if (start == end || truing == SideTruing.AsCut || edge.IsFold || !parting.IsTrued(edge))
            return edge with { Points = AsCut(parted, parting) };
        PaperEdge source = truing == SideTruing.Straight ? Straightened(edge) : edge;
        return source.Mapped((place, share) =>
        {
            double part = start == PaperSide.Moving ? 1 - share : share;
            return place + part * (parting.Moved(place) - place);
        });
    }

    /// <summary>The corners, and what stands on the edge at its share between them.</summary>
    private static PaperEdge Straightened(PaperEdge edge)
    {
        ImmutableArray<double> shares = edge.Shares;
        IEnumerable<PaperPoint> kept = edge.Points
            .Select((point, i) => (point with { Place = edge.Start + shares[i] * (edge.End - edge.Start) }, i))
            .Where(pair => pair.i == 0 || pair.i == edge.Points.Length - 1 || pair.Item1.Notches.Length > 0 || pair.Item1.Tag.Length > 0)
            .Select(pair => pair.Item1 with { IsAdded = true });
        return edge with { Points = [.. kept] };
    }

    private static ImmutableArray<PaperPoint> AsCut(ImmutableArray<(PaperPoint Point, PaperSide Side)> parted, IParting parting)
    {
        List<PaperPoint> points = [];
        ImmutableArray<string> waiting = [];
        foreach ((PaperPoint point, PaperSide side) in parted)
        {
            if (side == PaperSide.Gap)
            {
                waiting = waiting.AddRange(point.Notches);
                continue;
            }
            PaperPoint here = side == PaperSide.Still ? point : point with { Place = parting.Moved(point.Place) };
            here = here with { Notches = [.. waiting, .. here.Notches] };
            waiting = [];
            if (points.Count > 0 && (points[^1].Place - here.Place).Norm < SamePlaceMicrometers)
                points[^1] = points[^1] with { Notches = [.. points[^1].Notches, .. here.Notches], Tag = points[^1].Tag + here.Tag };
            else
                points.Add(here);
        }
        if (points.Count == 1)
            points.Add(points[0].Bare);
        return [.. points];
    }

    /// <summary>Where a strip is taken out beside an edge that lies on the cut, as a fold does, the strip's end takes the corner along that edge.</summary>
    private static void Slide(PaperEdge[] edges, Paper paper, ImmutableArray<(PaperPoint Point, PaperSide Side)>[] parted, IParting parting)
    {
        if (parting.Cuts.Length < 2)
            return;
        for (int i = 0; i < edges.Length; i++)
        {
            int next = (i + 1) % edges.Length;
            int previous = (i + edges.Length - 1) % edges.Length;
            if (edges[i].Points.Length > 2 && edges[i].Start == paper.Edges[i].Start && LiesOnCut(paper.Edges[previous], parting) && LeavesAtOnce(parted[i]))
                edges[i] = WithoutStart(edges[i]);
            if (edges[i].Points.Length > 2 && edges[i].End == paper.Edges[i].End && LiesOnCut(paper.Edges[next], parting) && LeavesAtOnce([.. parted[i].Reverse()]))
            {
                edges[i] = WithoutStart(edges[i] with { Points = [.. edges[i].Points.Reverse()] });
                edges[i] = edges[i] with { Points = [.. edges[i].Points.Reverse()] };
                edges[next] = edges[next] with { Points = edges[next].Points.SetItem(0, edges[next].Points[0] with { Place = edges[i].End }) };
            }
        }
    }

    private static bool LeavesAtOnce(ImmutableArray<(PaperPoint Point, PaperSide Side)> parted)
    {
        Vector corner = parted[0].Point.Place;
        (PaperPoint Point, PaperSide Side)[] away = [.. parted.SkipWhile(point => (point.Point.Place - corner).Norm < SamePlaceMicrometers).Take(1)];
        return parted[0].Side == PaperSide.Still && away is [{ Side: not PaperSide.Still }];
    }

    private static PaperEdge WithoutStart(PaperEdge edge) => edge with
    {
        Points = [edge.Points[1] with { Notches = edge.Points[0].Notches.AddRange(edge.Points[1].Notches) }, .. edge.Points.Skip(2)],
    };

    private static bool LiesOnCut(PaperEdge edge, IParting parting) =>
        edge.Points.All(point => Math.Abs(parting.Cuts[0].SideOf(point.Place)) <= OnLineMicrometers);

    /// <summary>Both ends with their parts; where that would turn the arrow, the whole arrow stays with its start.</summary>
    private static (Vector, Vector) Grainline(Vector start, Vector end, IParting parting)
    {
        Vector newStart = LineParting.PlaceOf(start, parting);
        Vector newEnd = LineParting.PlaceOf(end, parting);
        Vector run = newEnd - newStart;
        bool keepsDirection = run.Norm > 1 && run.Dot(end - start) > 0 && Math.Abs(run.Unit.Cross((end - start).Unit)) < 1e-6;
        return keepsDirection ? (newStart, newEnd)
            : parting.SideOf(start) == PaperSide.Moving && parting.SideOf(end) == PaperSide.Moving ? (newStart, newEnd)
            : (start, end);
    }
}
