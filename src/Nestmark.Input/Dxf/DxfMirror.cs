using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Outlines;
using Nestmark.Pieces;

namespace Nestmark.Input.Dxf;

/// <summary>The mirror line of a piece: whether the drawing holds half of it, its fold edge, and the whole.</summary>
/// <remarks>Arithmetic: references/formats.md 1.6. A drawing holds half a piece when every vertex lies on one side within 0.05 mm.</remarks>
internal sealed class DxfMirror
{
    private const double NearMicrometers = 50;
    private readonly Point _start;
    private readonly double _x;
    private readonly double _y;

    /// <summary>A mirror line through two different points.</summary>
    public DxfMirror(Point start, Point end)
    {
        Point along = end - start;
        (_start, _x, _y) = (start, along.X / along.NormMicrometers, along.Y / along.NormMicrometers);
    }

    /// <summary>The run of an outline off the line, with the vertex on the line before and after it; <c>default</c> when the drawing does not hold half a piece.</summary>
    public ImmutableArray<OutlineVertex> HalfOf(ImmutableArray<OutlineVertex> outline)
    {
        int count = outline.Length;
        double[] sides = [.. outline.Select(vertex => Side(vertex.Point))];
        bool isOneSided = sides.Min() >= -NearMicrometers || sides.Max() <= NearMicrometers;
        int[] leaving = [.. Enumerable.Range(0, count).Where(i => IsOn(sides[i]) && !IsOn(sides[(i + 1) % count]))];
        if (!isOneSided || leaving.Length != 1)
            return default;
        List<OutlineVertex> half = [OnLine(outline[leaving[0]])];
        int at = (leaving[0] + 1) % count;
        for (; !IsOn(sides[at]); at = (at + 1) % count)
            half.Add(outline[at]);
        half.Add(OnLine(outline[at]));
        return half[0].Point == half[^1].Point ? default : [.. half];
    }

    /// <summary>The half as a piece for the fold: its fold edge is one edge between two corners.</summary>
    public static DrawnPiece Folded(DrawnPiece drawn, ImmutableArray<OutlineVertex> half) => drawn with
    {
        Outline = half.SetItem(0, half[0] with { Kind = VertexKind.Marked }).SetItem(half.Length - 1, half[^1] with { Kind = VertexKind.Marked }),
        FoldLine = new Segment(half[^1].Point, half[0].Point),
    };

    /// <summary>The whole piece: the half and its mirror image.</summary>
    public DrawnPiece Opened(DrawnPiece drawn, ImmutableArray<OutlineVertex> half)
    {
        List<OutlineVertex> whole = [half[0] with { Kind = VertexKind.Joint }, .. half[1..^1], half[^1] with { Kind = VertexKind.Joint }];
        for (int i = half.Length - 2; i > 0; i--)
            whole.Add(half[i] with { Point = Image(half[i].Point) });
        return drawn with
        {
            Outline = [.. whole],
            Notches = [.. drawn.Notches.SelectMany(Both)],
            Marks = [.. drawn.Marks.SelectMany(Both)],
            Lines = [.. drawn.Lines.SelectMany(Both)],
        };
    }

    private IEnumerable<PieceMark> Both(PieceMark mark) => IsOn(Side(mark.Place)) ? [mark] : [mark, mark with { Place = Image(mark.Place) }];

    private IEnumerable<PieceLine> Both(PieceLine line) => line.Points.All(point => IsOn(Side(point)))
        ? [line]
        : [line, line with { Points = [.. line.Points.Select(Image)] }];

    private OutlineVertex OnLine(OutlineVertex vertex)
    {
        double side = Side(vertex.Point);
        return vertex with { Point = new Point(vertex.Point.X + Rounded(side * _y), vertex.Point.Y - Rounded(side * _x)) };
    }

    private Point Image(Point point)
    {
        double side = Side(point);
        return new Point(point.X + Rounded(2 * side * _y), point.Y - Rounded(2 * side * _x));
    }

    /// <summary>Distance to the left of the line, in micrometers.</summary>
    private double Side(Point point)
    {
        Point offset = point - _start;
        return offset.Y * _x - offset.X * _y;
    }

    private static bool IsOn(double side) => Math.Abs(side) <= NearMicrometers;

    private static long Rounded(double micrometers) => (long)Math.Round(micrometers, MidpointRounding.AwayFromZero);
}
