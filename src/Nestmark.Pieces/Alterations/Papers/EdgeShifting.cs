using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Shifts an edge while the edges beside it keep their lines, shortened or run on straight.</summary>
internal static class EdgeShifting
{
    private const double ReachFactor = 8;

    /// <summary>The piece with the edge shifted; or the fault that the sides do not meet it.</summary>
    public static PaperOutcome AlongSides(Paper paper, int index, Vector shift)
    {
        PaperEdge edge = paper.Edges[index];
        PaperEdge before = paper.Previous(index);
        PaperEdge after = paper.Next(index);
        if (paper.Edges.Length < 3)
            return AlterationFaults.SidesMiss(edge.Name);
        double reach = ReachFactor * shift.Norm;
        PaperPoint[] moved = [.. edge.Points.Select(point => point with { Place = point.Place + shift })];
        PaperPoint[] run = [Beyond(moved[1], moved[0], reach), .. moved, Beyond(moved[^2], moved[^1], reach)];
        PaperPoint[] incoming = [.. before.Points, Beyond(before.Points[^2], before.Points[^1], reach)];
        PaperPoint[] outgoing = [.. after.Points.Reverse(), Beyond(after.Points[1], after.Points[0], reach)];
        if (Meeting(incoming, run) is not { } start || Meeting(outgoing, run) is not { } end || start.RunIndex > end.RunIndex)
            return AlterationFaults.SidesMiss(edge.Name);
        PaperPoint first = edge.Points[0] with { Place = start.Place };
        PaperPoint last = edge.Points[^1] with { Place = end.Place };
        IEnumerable<PaperPoint> between = run.Skip(start.RunIndex + 1).Take(end.RunIndex - start.RunIndex).Select((point, _) => AtCorner(point, moved));
        Dictionary<string, PaperEdge> changed = new(StringComparer.Ordinal)
        {
            [before.Name] = before with { Points = [.. incoming.Take(start.PathIndex + 1).Select((point, i) => i == before.Points.Length - 1 ? Passed(point) : point), PaperPoint.At(start.Place)] },
            [after.Name] = after with { Points = [PaperPoint.At(end.Place), .. outgoing.Take(end.PathIndex + 1).Select((point, i) => i == after.Points.Length - 1 ? Passed(point) : point).Reverse()] },
            [edge.Name] = edge with { Points = [first, .. between.Where(point => (point.Place - first.Place).Norm > 1 && (point.Place - last.Place).Norm > 1), last] },
        };
        return paper with { Edges = Paper.Closed([.. paper.Edges.Select(candidate => changed.GetValueOrDefault(candidate.Name, candidate))]) };
    }

    private static PaperPoint Passed(PaperPoint point) => point with { IsAdded = true };

    private static PaperPoint AtCorner(PaperPoint point, PaperPoint[] moved) => point == moved[0] || point == moved[^1] ? Passed(point.Bare) : point;

    private static PaperPoint Beyond(PaperPoint before, PaperPoint end, double reach) =>
        PaperPoint.AddedAt(end.Place + reach * (end.Place - before.Place).Unit);

    private static RunCrossing? Meeting(PaperPoint[] path, PaperPoint[] run) =>
        RunCrossing.First([.. path.Select(point => point.Place)], [.. run.Select(point => point.Place)]);
}
