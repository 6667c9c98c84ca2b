using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>A seam line in the frame of the piece, with its cutting line.</summary>
/// <param name="Frame">From the drawing to the piece.</param>
/// <param name="Edges">Counter-clockwise as laid.</param>
/// <param name="SeamLine">The edges as one ring.</param>
/// <param name="CuttingLine">Around it.</param>
/// <param name="FoldEdge">What of the cutting line lies on the fold; <c>null</c> for none.</param>
internal sealed record LaidOutline(PieceFrame Frame, ImmutableArray<LaidEdge> Edges, Polygon SeamLine, Polygon CuttingLine, Segment? FoldEdge)
{
    /// <summary>Lays an outline with its grain along x and adds the allowances; <c>null</c> with a fault when that cannot be done.</summary>
    /// <param name="outline">In the frame of the drawing.</param>
    /// <param name="plan">Which turn, widths, fold and limit.</param>
    /// <param name="faults">Receives what is to be said.</param>
    public static LaidOutline? Of(SeamOutline outline, LayingPlan plan, ICollection<PieceFault> faults)
    {
        PieceFrame frame = FrameFor(outline, plan);
        ImmutableArray<LaidEdge> edges = EdgesIn(frame, outline, plan);
        if (SeamLineOf(edges, plan, faults) is not { } seamLine
            || Making.CuttingLine.Around(edges, plan, faults) is not { } cuttingLine)
        {
            return null;
        }
        LaidOutline laid = new(frame, edges, seamLine, cuttingLine, null);
        return plan.Fold is null ? laid.MovedBy(new Point(-cuttingLine.Bounds.MinX, -cuttingLine.Bounds.MinY)) : laid.OnFold(faults);
    }

    /// <summary>The frame in which the fold edge starts at the origin, or the seam line's box does.</summary>
    private static PieceFrame FrameFor(SeamOutline outline, LayingPlan plan)
    {
        PieceFrame turned = new(plan.Turn, Point.Origin);
        if (plan.Fold is not int fold)
        {
            Box bounds = Box.Around(turned.Apply(outline.Points).AsSpan());
            return turned.MovedBy(new Point(-bounds.MinX, -bounds.MinY));
        }
        OutlineEdge edge = outline.Edges[fold];
        return turned.MovedBy(-turned.Apply(plan.IsTurnedOver ? edge.Points[^1] : edge.Points[0]));
    }

    /// <summary>The edges as laid. The fold edge is straight; its far end, rounded by the turn, may lie a micrometer off the fold line and is put back.</summary>
    private static ImmutableArray<LaidEdge> EdgesIn(PieceFrame frame, SeamOutline outline, LayingPlan plan)
    {
        OutlineEdge? fold = plan.Fold is int index ? outline.Edges[index] : null;
        ImmutableArray<LaidEdge> edges = [.. outline.Edges.Select((edge, i) => new LaidEdge(
            edge.From,
            edge.To,
            Turned(i == plan.Fold ? [edge.Points[0], edge.Points[^1]] : edge.Points),
            plan.Widths[i].Width,
            plan.Widths[i].Ends,
            i == plan.Fold ? EdgeKind.Fold : EdgeKind.Cut))];
        return plan.IsTurnedOver ? [.. edges.Reverse()] : edges;

        ImmutableArray<Point> Turned(ImmutableArray<Point> points)
        {
            ImmutableArray<Point> laid = [.. points.Select(Laid)];
            return plan.IsTurnedOver ? [.. laid.Reverse()] : laid;
        }

        Point Laid(Point drawn) =>
            fold is not null && (drawn == fold.Points[0] || drawn == fold.Points[^1]) ? frame.Apply(drawn) with { Y = 0 } : frame.Apply(drawn);
    }

    private static Polygon? SeamLineOf(ImmutableArray<LaidEdge> edges, LayingPlan plan, ICollection<PieceFault> faults)
    {
        Point[] ring = [.. edges.SelectMany(edge => edge.Points.SkipLast(1))];
        if (plan.Fold is not null && ring.Count(point => point.Y <= 0) > 2)
        {
            faults.Add(PieceFaults.AcrossFold());
            return null;
        }
        Polygon? seamLine = Polygon.TwiceSignedArea(ring) > 0 ? Polygon.Of(ring) : null;
        if (seamLine is not null && Clipping.IsSimple(seamLine))
            return seamLine;
        faults.Add(PieceFaults.CrossesItself());
        return null;
    }

    private LaidOutline MovedBy(Point shift) => this with
    {
        Frame = Frame.MovedBy(shift),
        Edges = [.. Edges.Select(edge => edge.MovedBy(shift))],
        SeamLine = SeamLine.Shifted(shift),
        CuttingLine = CuttingLine.Shifted(shift),
        FoldEdge = FoldEdge is null ? null : new Segment(FoldEdge.Start + shift, FoldEdge.End + shift),
    };

    private LaidOutline? OnFold(ICollection<PieceFault> faults)
    {
        ImmutableArray<Point> ring = CuttingLine.Outer;
        int runs = Enumerable.Range(0, ring.Length).Count(i => ring[i].Y == 0 && ring[(i + 1) % ring.Length].Y > 0);
        if (runs != 1)
        {
            faults.Add(PieceFaults.AllowanceAcrossFold());
            return null;
        }
        long start = ring.Where(point => point.Y == 0).Min(point => point.X);
        long end = ring.Where(point => point.Y == 0).Max(point => point.X);
        return (this with { FoldEdge = new Segment(new Point(start, 0), new Point(end, 0)) }).MovedBy(new Point(-start, 0));
    }
}
