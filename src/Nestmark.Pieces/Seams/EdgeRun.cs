using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Seams;

/// <summary>Neighboring edges of a piece, walked along the seam line from one corner to another, either way round.</summary>
public sealed class EdgeRun
{
    private const double NotchReachMicrometers = 2_000;
    private const double EndMicrometers = 1_000;

    private EdgeRun(Piece piece, ImmutableArray<string> corners, ImmutableArray<PieceEdge> edges, ImmutableArray<Point> points)
    {
        Piece = piece;
        Corners = corners;
        Edges = edges;
        Points = points;
        LengthMillimeters = new OutlineEdge("", "", points).LengthMicrometers / 1000;
        Notches = NotchesOn(piece, points);
    }

    /// <summary>The piece.</summary>
    public Piece Piece { get; }

    /// <summary>Letters in the order of walking.</summary>
    public ImmutableArray<string> Corners { get; }

    /// <summary>The edges in the order of walking.</summary>
    public ImmutableArray<PieceEdge> Edges { get; }

    /// <summary>The seam line from the first corner to the last.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Its length along the seam line.</summary>
    public double LengthMillimeters { get; }

    /// <summary>Notches on it in the order of walking; those at its very ends are left out.</summary>
    public ImmutableArray<NotchAlong> Notches { get; }

    /// <summary>Whether it belongs to half a piece, whose other half has the same edges once more.</summary>
    public bool IsOfHalf => Piece.Cut.Kind == CutKind.OnFold;

    /// <summary>The edge that crosses the run at its first corner; <c>null</c> where the run goes all the way round.</summary>
    public PieceEdge? CrossingAtStart => Neighbor(Corners[0], Edges[0]);

    /// <summary>The edge that crosses the run at its last corner; <c>null</c> where the run goes all the way round.</summary>
    public PieceEdge? CrossingAtEnd => Neighbor(Corners[^1], Edges[^1]);

    /// <summary>The run over some corners, or <c>null</c> when two of them are no neighbors or the way turns back.</summary>
    /// <param name="piece">With its edges.</param>
    /// <param name="corners">Letters, counter-clockwise or clockwise; two or more. Where both ways are edges, the counter-clockwise one is meant.</param>
    public static EdgeRun? Find(Piece piece, ImmutableArray<string> corners) =>
        corners.Length < 2 ? null : Along(piece, corners) ?? Against(piece, corners);

    /// <summary>The place at a distance from the start; clamped to the run.</summary>
    public Point PlaceAt(double alongMillimeters)
    {
        double rest = alongMillimeters * 1000;
        for (int i = 0; i + 1 < Points.Length; i++)
        {
            Vector start = Vector.Of(Points[i]);
            Vector step = Vector.Of(Points[i + 1]) - start;
            if (rest <= step.Norm && step.Norm > 0)
                return (start + Math.Max(0, rest) / step.Norm * step).Rounded();
            rest -= step.Norm;
        }
        return Points[^1];
    }

    /// <summary>Interior angle of the piece at the first (or last) corner.</summary>
    internal double InteriorDegrees(Point corner)
    {
        ImmutableArray<Point> ring = Piece.SeamLine.Outer;
        int index = NearestIndex(ring, corner);
        Vector here = Vector.Of(ring[index]);
        Vector before = here - Vector.Of(ring[(index + ring.Length - 1) % ring.Length]);
        Vector after = Vector.Of(ring[(index + 1) % ring.Length]) - here;
        return 180 - Angle.Atan2(before.Cross(after), before.Dot(after)) * 180 / Math.PI;
    }

    private static EdgeRun? Along(Piece piece, ImmutableArray<string> corners)
    {
        ImmutableArray<PieceEdge> edges = EdgesOf(piece, corners);
        return edges.IsEmpty ? null : new EdgeRun(piece, corners, edges, PointsOf(piece, edges));
    }

    private static EdgeRun? Against(Piece piece, ImmutableArray<string> corners)
    {
        ImmutableArray<PieceEdge> edges = EdgesOf(piece, [.. corners.Reverse()]);
        return edges.IsEmpty ? null : new EdgeRun(piece, corners, [.. edges.Reverse()], [.. PointsOf(piece, edges).Reverse()]);
    }

    private static ImmutableArray<PieceEdge> EdgesOf(Piece piece, ImmutableArray<string> corners)
    {
        PieceEdge?[] edges = [.. Enumerable.Range(0, corners.Length - 1)
            .Select(i => piece.Edges.FirstOrDefault(edge => edge.From == corners[i] && edge.To == corners[i + 1]))];
        bool isRun = edges.All(edge => edge is not null) && edges.Distinct().Count() == edges.Length;
        return isRun ? [.. edges.Select(edge => edge!)] : [];
    }

    /// <summary>The seam line over some edges in the order of the letters.</summary>
    private static ImmutableArray<Point> PointsOf(Piece piece, ImmutableArray<PieceEdge> edges)
    {
        ImmutableArray<Point> ring = piece.SeamLine.Outer;
        int[] corners = [.. piece.Corners.Select(corner => NearestIndex(ring, corner.Place))];
        int step = RunsForward(piece, ring, corners) ? 1 : -1;
        List<Point> points = [ring[IndexOf(edges[0].From)]];
        foreach (PieceEdge edge in edges)
        {
            int end = IndexOf(edge.To);
            int at = IndexOf(edge.From);
            do
            {
                at = (at + step + ring.Length) % ring.Length;
                points.Add(ring[at]);
            }
            while (at != end);
        }
        return [.. points];

        int IndexOf(string letter) => corners[piece.Corners.ToList().FindIndex(corner => corner.Letter == letter)];
    }

    /// <summary>Whether the letters run counter-clockwise on the piece as laid; those of a piece that was turned over do not.</summary>
    private static bool RunsForward(Piece piece, ImmutableArray<Point> ring, int[] corners)
    {
        if (corners.Length == 1)
            return true;
        if (corners.Length > 2)
        {
            int first = corners.Skip(1).Min(corner => (corner - corners[0] + ring.Length) % ring.Length);
            return (corners[1] - corners[0] + ring.Length) % ring.Length == first;
        }
        double forward = 0;
        for (int at = corners[0]; at != corners[1]; at = (at + 1) % ring.Length)
            forward += (Vector.Of(ring[(at + 1) % ring.Length]) - Vector.Of(ring[at])).Norm;
        double around = piece.SeamLine.PerimeterMillimeters * 1000;
        double wanted = piece.Edges[0].SeamLineLength.Micrometers;
        return Math.Abs(forward - wanted) <= Math.Abs(around - forward - wanted);
    }

    private static int NearestIndex(ImmutableArray<Point> ring, Point place)
    {
        int exact = ring.IndexOf(place);
        return exact >= 0 ? exact : Enumerable.Range(0, ring.Length).MinBy(i => (ring[i] - place).NormMicrometers);
    }

    private PieceEdge? Neighbor(string corner, PieceEdge own) =>
        Piece.Edges.FirstOrDefault(edge => edge != own && (edge.From == corner || edge.To == corner) && !Edges.Contains(edge));

    private static ImmutableArray<NotchAlong> NotchesOn(Piece piece, ImmutableArray<Point> points)
    {
        double whole = new OutlineEdge("", "", points).LengthMicrometers;
        return [.. piece.Notches
            .Select(notch => (notch.Name, Along: DistanceAlong(points, Vector.Of(notch.OnSeamLine))))
            .Where(notch => notch.Along > EndMicrometers && notch.Along < whole - EndMicrometers)
            .OrderBy(notch => notch.Along)
            .Select(notch => new NotchAlong(notch.Name, notch.Along!.Value / 1000))];
    }

    /// <summary>How far along a run a place on it lies, in micrometers; <c>null</c> for a place off the run.</summary>
    private static double? DistanceAlong(ImmutableArray<Point> points, Vector place)
    {
        double walked = 0;
        (double Distance, double Along) nearest = (double.PositiveInfinity, 0);
        for (int i = 0; i + 1 < points.Length; i++)
        {
            Vector start = Vector.Of(points[i]);
            Vector end = Vector.Of(points[i + 1]);
            Vector foot = Nearest.OnSegment(start, end, place);
            if ((foot - place).Norm < nearest.Distance)
                nearest = ((foot - place).Norm, walked + (foot - start).Norm);
            walked += (end - start).Norm;
        }
        return nearest.Distance <= NotchReachMicrometers ? nearest.Along : null;
    }
}
