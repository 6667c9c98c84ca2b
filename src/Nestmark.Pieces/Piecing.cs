using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>Cuts a piece in two that a seam joins again, for cloth that is too small for the whole.</summary>
/// <remarks>Both parts keep the grain, and both joined edges get the allowance: references/trade.md 9.3 [PIECE].</remarks>
public static class Piecing
{
    /// <summary>The two parts, divided across the grain in the middle of the cutting line.</summary>
    /// <param name="whole">The piece; a half piece is divided across its fold, and both parts lie on the fold.</param>
    /// <param name="allowance">Seam allowance of each joined edge, zero or more, less than half the length of the piece.</param>
    /// <returns>Named with "part 1" and "part 2"; or nothing when either part would fall into several, or would not reach the fold.</returns>
    /// <exception cref="ArgumentException">The allowance is below zero.</exception>
    public static ImmutableArray<Piece> InTwo(Piece whole, Length allowance)
    {
        if (allowance < Length.Zero)
            throw new ArgumentException("An allowance must be zero or more.", nameof(allowance));
        Box room = whole.CuttingLine.Bounds;
        long middle = (room.MinX + room.MaxX) / 2;
        Piece? first = Part(whole, 1, room with { MaxX = middle }, allowance.Micrometers);
        Piece? second = Part(whole, 2, room with { MinX = middle }, allowance.Micrometers);
        return first is null || second is null ? [] : [first, second];
    }

    private static Piece? Part(Piece whole, int number, Box half, long allowance)
    {
        Box room = whole.CuttingLine.Bounds;
        Box cut = number == 1 ? half with { MaxX = half.MaxX + allowance } : half with { MinX = half.MinX - allowance };
        ImmutableArray<Polygon> cuttingLine = Clipping.Intersection(whole.CuttingLine, Rectangle(cut));
        ImmutableArray<Polygon> seamLine = Clipping.Intersection(whole.SeamLine, Rectangle(half));
        if (cuttingLine.Length != 1 || seamLine.Length != 1 || cut.Width >= room.Width)
            return null;
        Segment? fold = whole.FoldEdge is { } edge
            ? new Segment(new Point(Math.Max(edge.Start.X, cut.MinX), 0), new Point(Math.Min(edge.End.X, cut.MaxX), 0))
            : null;
        if (fold is { } part && part.Start.X >= part.End.X)
            return null;
        long y = (cuttingLine[0].Bounds.MinY + cuttingLine[0].Bounds.MaxY) / 2;
        return whole with
        {
            Name = $"{whole.Name} part {number}",
            SeamLine = seamLine[0],
            CuttingLine = cuttingLine[0],
            Grainline = new Segment(new Point(half.MinX + half.Width / 4, y), new Point(half.MaxX - half.Width / 4, y)),
            FoldEdge = fold,
            CenterLine = null,
            Corners = [],
            Edges = [],
            Notches = [.. whole.Notches.Where(notch => Holds(half, notch.OnSeamLine))],
            Lines = [],
            PiecedAllowance = null,
            Marks = [.. whole.Marks.Where(mark => Holds(half, mark.Place))],
        };
    }

    private static bool Holds(Box box, Point point) => box.Contains(new Box(point.X, point.Y, point.X, point.Y));

    private static Polygon Rectangle(Box box) => Polygon.Of([new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)]);
}
