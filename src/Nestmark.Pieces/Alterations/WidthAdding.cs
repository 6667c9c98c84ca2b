using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Adds a strip to an edge: a hem, facing, placket or pleat in one with the piece. The old edge stays as a drawn line, where it is turned.</summary>
/// <remarks>Ends of a turned-up strip: references/trade.md 3.3, reflected end.</remarks>
public static class WidthAdding
{
    private const double StraightMicrometers = 1_000;

    /// <summary>The piece with the strip.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="edge">The edge, as "A-B"; its corners go out with it.</param>
    /// <param name="width">Above zero.</param>
    /// <param name="ends">How the strip ends.</param>
    /// <param name="label">What is written at the old edge, as "hem".</param>
    public static AlterationResult Apply(PieceDraft draft, string edge, Length width, StripEnds ends, string label) => Trying.With(draft, width, (paper, amount) =>
    {
        int index = paper.IndexOf(edge);
        if (index < 0)
            return AlterationFaults.NoSuchEdge(edge, paper.EdgeNames);
        PaperOutcome added = Added(paper, index, amount.Micrometers, ends);
        return added.Paper is { } wider
            ? wider with { Lines = wider.Lines.Add(new PaperLine(label, [.. paper.Edges[index].Points.Select(point => point.Place)])) }
            : added;
    });

    private static PaperOutcome Added(Paper paper, int index, double width, StripEnds ends)
    {
        PaperEdge edge = paper.Edges[index];
        bool isStraight = edge.Points.All(point => Math.Abs((edge.End - edge.Start).Unit.Cross(point.Place - edge.Start)) <= StraightMicrometers);
        if (ends != StripEnds.Square && !isStraight)
            return AlterationFaults.EndsDoNotFit(edge.Name);
        if (ends == StripEnds.AlongSides)
            return EdgeShifting.AlongSides(paper, index, width * (edge.End - edge.Start).Unit.Right);
        return ends == StripEnds.Square ? Square(paper, index, width) : Reflected(paper, index, width);
    }

    private static Paper Square(Paper paper, int index, double width)
    {
        PaperEdge edge = paper.Edges[index];
        PaperEdge outer = edge with { Points = [.. edge.Points.Select((point, i) => point with { Place = point.Place + width * Outward(edge.Points, i) })] };
        return WithStrip(paper, index, [PaperPoint.At(edge.Start)], outer, [PaperPoint.At(edge.End)]);
    }

    private static PaperOutcome Reflected(Paper paper, int index, double width)
    {
        PaperEdge edge = paper.Edges[index];
        if (MirroredSide([.. paper.Previous(index).Points.Reverse()], edge, width) is not { } start
            || MirroredSide([.. paper.Next(index).Points], edge, width) is not { } end)
        {
            return AlterationFaults.EndsDoNotFit(edge.Name);
        }
        PaperEdge outer = edge with { Points = [edge.Points[0] with { Place = start[^1].Place }, edge.Points[^1] with { Place = end[^1].Place }] };
        foreach (PaperPoint notched in edge.Points.Skip(1).SkipLast(1).Where(point => point.Notches.Length > 0))
            outer = outer.WithPoint(notched.Place + width * (edge.End - edge.Start).Unit.Right, point => point with { Notches = notched.Notches });
        return WithStrip(paper, index, [.. start.SkipLast(1)], outer, [.. end.SkipLast(1).Reverse()]);
    }

    /// <summary>The strip between the edges beside it: each is run on to the outer corner.</summary>
    private static Paper WithStrip(Paper paper, int index, ImmutableArray<PaperPoint> startSide, PaperEdge outer, ImmutableArray<PaperPoint> endSide)
    {
        int before = (index + paper.Edges.Length - 1) % paper.Edges.Length;
        int after = (index + 1) % paper.Edges.Length;
        PaperEdge[] edges = [.. paper.Edges];
        edges[index] = outer;
        edges[before] = edges[before] with { Points = [.. edges[before].Points.SkipLast(1), .. startSide, PaperPoint.At(outer.Start)] };
        edges[after] = edges[after] with { Points = [PaperPoint.At(outer.End), .. endSide, .. edges[after].Points.Skip(1)] };
        return paper with { Edges = Paper.Closed(edges) };
    }

    /// <summary>A side from the corner on, mirrored about the edge, up to the strip's width; <c>null</c> where it does not reach so far.</summary>
    private static List<PaperPoint>? MirroredSide(ImmutableArray<PaperPoint> side, PaperEdge edge, double width)
    {
        Vector direction = (edge.End - edge.Start).Unit;
        List<PaperPoint> mirrored = [PaperPoint.At(side[0].Place)];
        for (int i = 1; i < side.Length; i++)
        {
            Vector here = side[i].Place.MirroredAbout(edge.Start, direction);
            double depth = direction.Right.Dot(here - edge.Start);
            double depthBefore = direction.Right.Dot(mirrored[^1].Place - edge.Start);
            if (depth >= width)
            {
                mirrored.Add(PaperPoint.At(mirrored[^1].Place + (width - depthBefore) / (depth - depthBefore) * (here - mirrored[^1].Place)));
                return mirrored;
            }
            mirrored.Add(PaperPoint.At(here));
        }
        return null;
    }

    /// <summary>Out of the edge at a point; between two stretches such that both are set off by the same width.</summary>
    private static Vector Outward(ImmutableArray<PaperPoint> points, int index)
    {
        Vector before = index > 0 ? (points[index].Place - points[index - 1].Place).Unit.Right : default;
        Vector after = index + 1 < points.Length ? (points[index + 1].Place - points[index].Place).Unit.Right : default;
        if (index == 0)
            return after;
        return index + 1 == points.Length ? before : 1 / (1 + before.Dot(after)) * (before + after);
    }
}
