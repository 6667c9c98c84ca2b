using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Seams;

namespace Nestmark.Pieces.Drafting;

/// <summary>Drafts a facing: everything of a piece that lies within a width of some of its edges.</summary>
/// <remarks>Facing shapes are taken from the altered edge (references/trade.md 9.3, common practice), so that both go on meeting.</remarks>
public static class FacingDraft
{
    private const int DiskCorners = 96;
    private const double SameMicrometers = 20;

    /// <summary>The facing in the frame of the piece; it keeps the piece's grain, its fold, and the allowances of the edges that it shares.</summary>
    /// <param name="run">The edges that are faced.</param>
    /// <param name="width">Above zero.</param>
    /// <param name="cut">How often it is cut; <c>null</c> as often as the piece.</param>
    /// <param name="say">A length in the job's units.</param>
    public static DraftingResult Draft(EdgeRun run, Length width, CutQuantity? cut, Func<Length, string> say)
    {
        ImmutableArray<Polygon> parts = Clipping.Intersection(run.Piece.SeamLine, Band(run, width));
        Polygon? facing = parts.OrderByDescending(part => part.TwiceArea).FirstOrDefault();
        if (facing is null || !facing.Holes.IsEmpty || parts.Length > 1)
            return DraftingResult.Refused("A facing of this width does not come out in one piece.", "Make it narrower, or name edges that belong together.");
        CutQuantity quantity = cut ?? run.Piece.Cut;
        ImmutableArray<OutlineVertex> outline = OutlineOf(facing, run.Piece);
        return DraftingResult.Of(new DraftedShape
        {
            Outline = outline,
            Cut = quantity,
            FoldLine = quantity.Kind == CutKind.OnFold ? FoldOf(facing) : null,
            Edges = SharedAllowances(outline, run.Piece),
            Notches = [.. NotchesOn(run)],
            Said = $"Faces {run.Piece.Title}.{string.Join("-", run.Corners)}, {say(Length.FromMillimeters(run.LengthMillimeters))} long, {say(width)} wide.",
        });
    }

    private static Polygon Band(EdgeRun run, Length width)
    {
        List<Polygon> parts = [];
        for (int i = 1; i < run.Points.Length; i++)
        {
            (Point start, Point end) = (run.Points[i - 1], run.Points[i]);
            Point along = end - start;
            double reach = width.Micrometers / along.NormMicrometers;
            Point aside = new((long)Math.Round(-along.Y * reach), (long)Math.Round(along.X * reach));
            parts.AddRange([Disk(start, aside), Disk(end, aside), Polygon.Of([start - aside, end - aside, end + aside, start + aside])]);
        }
        return Clipping.Union(parts)[0];
    }

    /// <summary>A disk of many corners; two of them are those of the strip beside the edge, so that the line goes on from one to the other without a step.</summary>
    private static Polygon Disk(Point center, Point aside) => Polygon.Of(Enumerable.Range(0, DiskCorners).Select(i =>
    {
        Angle angle = Angle.FromDegrees(i * 360.0 / DiskCorners);
        return center + new Point(
            (long)Math.Round(aside.X * angle.CosineRatio - aside.Y * angle.SineRatio), (long)Math.Round(aside.X * angle.SineRatio + aside.Y * angle.CosineRatio));
    }));

    /// <summary>Corners of the piece stay corners; elsewhere a corner is what turns sharply.</summary>
    private static ImmutableArray<OutlineVertex> OutlineOf(Polygon facing, Piece piece) => [.. facing.Outer.Select(point => new OutlineVertex(
        point, piece.Corners.Any(corner => (corner.Place - point).NormMicrometers <= SameMicrometers) ? VertexKind.Marked : VertexKind.Joint))];

    private static Segment? FoldOf(Polygon facing)
    {
        Point[] onFold = [.. facing.Outer.Where(point => Math.Abs(point.Y) <= 2).Order()];
        return onFold.Length < 2 ? null : new Segment(onFold[0], onFold[^1]);
    }

    /// <summary>Edges that lie on edges of the piece take their allowances.</summary>
    private static ImmutableArray<EdgeAllowance> SharedAllowances(ImmutableArray<OutlineVertex> outline, Piece piece)
    {
        if (Making.SeamOutline.Of(outline, []) is not { } seam)
            return [];
        EdgeRun[] edges = [.. piece.Edges.Where(edge => edge.Kind == EdgeKind.Cut).Select(edge => EdgeRun.Find(piece, [edge.From, edge.To])).OfType<EdgeRun>()];
        List<EdgeAllowance> allowances = [];
        foreach (Making.OutlineEdge own in seam.Edges)
        {
            EdgeRun? shared = Array.Find(edges, edge => own.Points.All(point => Distance(edge, point) <= SameMicrometers));
            if (shared is not null)
                allowances.Add(new EdgeAllowance(own.From, own.To, shared.Edges[0].Allowance, AllowanceEnds.Mitred));
        }
        return [.. allowances];
    }

    private static double Distance(EdgeRun edge, Point place) => new Making.OutlineEdge("", "", edge.Points).DistanceMicrometers(Making.Vector.Of(place));

    private static IEnumerable<PieceMark> NotchesOn(EdgeRun run) => run.Notches.Select(notch => new PieceMark(notch.Name, run.PlaceAt(notch.AlongMillimeters)));
}
