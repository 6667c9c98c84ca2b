using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Output.PieceSheets;

/// <summary>The stretch of seam line that an edge is.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="Points">From its first corner to its second; two or more.</param>
internal sealed record EdgeRun(PieceEdge Edge, ImmutableArray<Point> Points)
{
    /// <summary>All edges of a piece in its order; those whose corners are not on the seam line are left out.</summary>
    public static ImmutableArray<EdgeRun> AllOf(Piece piece) => [.. piece.Edges.Select(edge => Of(piece, edge)).OfType<EdgeRun>()];

    /// <summary>How far along the edge the nearest place to a point is, and how far the point is from it.</summary>
    public (Length Along, Length Away) Reach(Point point)
    {
        double along = 0;
        double before = 0;
        double least = double.MaxValue;
        for (int i = 0; i + 1 < Points.Length; i++)
        {
            Point place = PointLocation.NearestOnSegment(Points[i], Points[i + 1], point);
            double away = (place - point).NormMicrometers;
            if (away < least)
                (least, along) = (away, before + (place - Points[i]).NormMicrometers);
            before += (Points[i + 1] - Points[i]).NormMicrometers;
        }
        return (Length.FromMillimeters(along / 1000), Length.FromMillimeters(least / 1000));
    }

    /// <summary>The two ends of the drawn step in whose middle the edge is half way.</summary>
    public (Point Start, Point End) Middle()
    {
        double half = Points.Zip(Points.Skip(1)).Sum(step => (step.Second - step.First).NormMicrometers) / 2;
        foreach ((Point start, Point end) in Points.Zip(Points.Skip(1)))
        {
            half -= (end - start).NormMicrometers;
            if (half <= 0)
                return (start, end);
        }
        return (Points[^2], Points[^1]);
    }

    // Letters run clockwise on a piece that was turned over, so the way round is the one whose length is the edge's.
    private static EdgeRun? Of(Piece piece, PieceEdge edge)
    {
        ImmutableArray<Point> ring = piece.SeamLine.Outer;
        int from = IndexOf(piece, edge.From);
        int to = IndexOf(piece, edge.To);
        if (from < 0 || to < 0)
            return null;
        ImmutableArray<Point> forward = Walk(ring, from, to);
        ImmutableArray<Point> backward = [.. Walk(ring, to, from).Reverse()];
        return new EdgeRun(edge, Misfit(forward, edge) <= Misfit(backward, edge) ? forward : backward);
    }

    private static int IndexOf(Piece piece, string letter) =>
        piece.Corners.FirstOrDefault(corner => corner.Letter == letter) is PieceCorner found ? piece.SeamLine.Outer.IndexOf(found.Place) : -1;

    private static ImmutableArray<Point> Walk(ImmutableArray<Point> ring, int from, int to)
    {
        int steps = (to - from + ring.Length - 1) % ring.Length + 1;
        return [.. Enumerable.Range(from, steps + 1).Select(i => ring[i % ring.Length])];
    }

    private static double Misfit(ImmutableArray<Point> points, PieceEdge edge) =>
        Math.Abs(points.Zip(points.Skip(1)).Sum(step => (step.Second - step.First).NormMicrometers) - edge.SeamLineLength.Micrometers);
}
