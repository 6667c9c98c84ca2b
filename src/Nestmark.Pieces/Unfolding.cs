using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces;

/// <summary>Opens a piece that lies on the fold to the whole piece it becomes.</summary>
public static class Unfolding
{
    private static readonly double CornerCosine = Angle.FromDegrees(30).CosineRatio;

    /// <summary>The whole piece: the half and its mirror image about y = 0, without a seam between them; its fold edge becomes its center line.</summary>
    /// <param name="half">A piece with a fold edge on y = 0, itself above it.</param>
    /// <returns>
    /// Exactly symmetric about y = 0 and exactly twice the half in area. Corners and edges of the half keep their letters; mirror images have
    /// a prime, and their edges run the other way round. An edge that crosses the center line without a turn over 30 degrees is one edge, as "B-B′".
    /// What lies on the fold is not doubled. It is cut as copies; the grainline stays on the half.
    /// </returns>
    /// <exception cref="ArgumentException">The piece has no fold edge, or meets y = 0 elsewhere.</exception>
    public static Piece Unfold(Piece half)
    {
        if (half.FoldEdge is null)
            throw new ArgumentException("Only a piece with a fold edge can be unfolded.", nameof(half));
        Polygon seamLine = Opened(half.SeamLine);
        ImmutableArray<string> gone = PassedCorners(half, seamLine);
        ImmutableArray<PieceCorner> kept = [.. half.Corners.Where(corner => !gone.Contains(corner.Letter))];
        return half with
        {
            Cut = half.Cut with { Kind = CutKind.Copies },
            SeamLine = seamLine,
            CuttingLine = Opened(half.CuttingLine),
            FoldEdge = null,
            CenterLine = half.FoldEdge,
            Corners = [.. kept, .. kept.Where(corner => corner.Place.Y != 0).Select(corner => new PieceCorner(Primed(corner.Letter), Mirrored(corner.Place)))],
            Edges = UnfoldedEdges.Of(half, gone),
            Notches = [.. half.Notches, .. half.Notches.Where(notch => notch.OnSeamLine.Y != 0).Select(Mirrored)],
            Lines = [.. half.Lines, .. half.Lines.Where(line => line.Points.Any(point => point.Y != 0)).Select(Mirrored)],
            Marks = [.. half.Marks, .. half.Marks.Where(mark => mark.Place.Y != 0).Select(mark => mark with { Place = Mirrored(mark.Place) })],
        };
    }

    /// <summary>The letter of a mirror image.</summary>
    internal static string Primed(string letter) => letter + "′";

    /// <summary>Corners on the fold that the opened outline passes without a corner; one is kept where no other is left.</summary>
    private static ImmutableArray<string> PassedCorners(Piece half, Polygon opened)
    {
        IEnumerable<PieceCorner> passed = half.Corners.Where(corner => corner.Place.Y == 0 && !IsCorner(opened, corner.Place));
        return [.. passed.Select(corner => corner.Letter).Skip(passed.Count() == half.Corners.Length ? 1 : 0)];
    }

    private static Point Mirrored(Point point) => point with { Y = -point.Y };

    private static Notch Mirrored(Notch notch) => new(notch.Name, Mirrored(notch.OnSeamLine), Mirrored(notch.OnCuttingLine));

    private static PieceLine Mirrored(PieceLine line) => line with { Points = [.. line.Points.Select(Mirrored)] };

    /// <summary>The ring from the fold's right end round to its left end, and back as its mirror image; the ends stay only where the outline turns there.</summary>
    private static Polygon Opened(Polygon half)
    {
        ImmutableArray<Point> ring = half.Outer;
        int[] leaving = [.. Enumerable.Range(0, ring.Length).Where(i => ring[i].Y == 0 && ring[(i + 1) % ring.Length].Y > 0)];
        if (leaving.Length != 1 || half.Bounds.MinY < 0)
            throw new ArgumentException("A half piece must lie above y = 0 and meet it along one line.", nameof(half));
        List<Point> upper = [ring[leaving[0]]];
        for (int i = leaving[0] + 1; upper.Count == 1 || upper[^1].Y > 0; i++)
            upper.Add(ring[i % ring.Length]);
        List<Point> whole = [.. upper, .. upper.SkipLast(1).Skip(1).Reverse().Select(Mirrored)];
        whole.RemoveAll(point => point.Y == 0 && IsPassedStraight(upper, point));
        return Polygon.Of(whole);
    }

    private static bool IsPassedStraight(List<Point> upper, Point onFold) =>
        (onFold == upper[0] && upper[1].X == onFold.X) || (onFold == upper[^1] && upper[^2].X == onFold.X);

    private static bool IsCorner(Polygon whole, Point place)
    {
        int index = whole.Outer.IndexOf(place);
        if (index < 0)
            return false;
        int count = whole.Outer.Length;
        Vector before = Vector.Of(place) - Vector.Of(whole.Outer[(index + count - 1) % count]);
        Vector after = Vector.Of(whole.Outer[(index + 1) % count]) - Vector.Of(place);
        return before.Unit.Dot(after.Unit) < CornerCosine;
    }
}
