using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>A drawn outline put in order: counter-clockwise, without repeated points, from corner A on, with its lettered edges.</summary>
internal sealed class SeamOutline
{
    /// <summary>Neighbors nearer than this are one vertex: a drawing's rounding, not a shape.</summary>
    private const double SamePlaceMicrometers = 5;

    private const int NamesShown = 30;

    /// <summary>Sharpest turn that is not a corner: 30 degrees (design.md 5.1).</summary>
    private static readonly double CornerCosine = Angle.FromDegrees(30).CosineRatio;

    private SeamOutline(ImmutableArray<Point> points, ImmutableArray<int> corners)
    {
        Points = points;
        Corners = [.. corners.Select((index, i) => new PieceCorner(LetterOf(i), points[index]))];
        Edges = [.. corners.Select((_, i) => EdgeFrom(points, corners, i))];
    }

    /// <summary>All points, counter-clockwise from A.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Lettered corners; one at the lowest point where the outline has none.</summary>
    public ImmutableArray<PieceCorner> Corners { get; }

    /// <summary>Edges in order, the first from A.</summary>
    public ImmutableArray<OutlineEdge> Edges { get; }

    /// <summary>The edges' names, for messages; the first of very many.</summary>
    public string EdgeNames
    {
        get
        {
            string names = string.Join(", ", Edges.Take(NamesShown).Select(edge => edge.Name));
            return Edges.Length <= NamesShown ? names : string.Create(CultureInfo.InvariantCulture, $"{names} and {Edges.Length - NamesShown} more");
        }
    }

    /// <summary>Puts an outline in order; <c>null</c> when fewer than three places or no area are left.</summary>
    public static SeamOutline? Of(ImmutableArray<OutlineVertex> outline)
    {
        List<OutlineVertex> vertices = Distinct(outline);
        Point[] points = [.. vertices.Select(vertex => vertex.Point)];
        Int128 area = Polygon.TwiceSignedArea(points);
        if (vertices.Count < 3 || area == 0)
            return null;
        if (area < 0)
            vertices.Reverse();
        return FromFirstCorner(vertices);
    }

    /// <summary>A, B … Z, AA, AB …</summary>
    private static string LetterOf(int index)
    {
        string letter = ((char)('A' + index % 26)).ToString(CultureInfo.InvariantCulture);
        return index < 26 ? letter : LetterOf(index / 26 - 1) + letter;
    }

    private static List<OutlineVertex> Distinct(ImmutableArray<OutlineVertex> outline)
    {
        List<OutlineVertex> vertices = [];
        foreach (OutlineVertex vertex in outline)
        {
            if (vertices.Count > 0 && SamePlace(vertices[^1], vertex))
                vertices[^1] = Merged(vertices[^1], vertex);
            else
                vertices.Add(vertex);
        }
        while (vertices.Count > 1 && SamePlace(vertices[0], vertices[^1]))
        {
            vertices[0] = Merged(vertices[0], vertices[^1]);
            vertices.RemoveAt(vertices.Count - 1);
        }
        return vertices;
    }

    private static bool SamePlace(OutlineVertex left, OutlineVertex right) =>
        (Vector.Of(left.Point) - Vector.Of(right.Point)).Norm < SamePlaceMicrometers;

    private static OutlineVertex Merged(OutlineVertex kept, OutlineVertex dropped) => kept with { Kind = Stronger(kept.Kind, dropped.Kind) };

    private static VertexKind Stronger(VertexKind left, VertexKind right) =>
        left == VertexKind.Marked || right == VertexKind.Marked ? VertexKind.Marked
        : left == VertexKind.Joint || right == VertexKind.Joint ? VertexKind.Joint
        : VertexKind.Curve;

    private static SeamOutline FromFirstCorner(List<OutlineVertex> vertices)
    {
        List<int> corners = [.. Enumerable.Range(0, vertices.Count).Where(i => IsCorner(vertices, i))];
        IEnumerable<int> candidates = corners.Count > 0 ? corners : Enumerable.Range(0, vertices.Count);
        int first = candidates.OrderBy(i => vertices[i].Point.Y).ThenBy(i => vertices[i].Point.X).First();
        int count = vertices.Count;
        ImmutableArray<Point> points = [.. Enumerable.Range(0, count).Select(i => vertices[(first + i) % count].Point)];
        return new SeamOutline(points, corners.Count > 0 ? [.. corners.Select(i => (i - first + count) % count).Order()] : [0]);
    }

    private static bool IsCorner(List<OutlineVertex> vertices, int index)
    {
        OutlineVertex here = vertices[index];
        if (here.Kind != VertexKind.Joint)
            return here.Kind == VertexKind.Marked;
        Vector before = Vector.Of(here.Point) - Vector.Of(vertices[(index + vertices.Count - 1) % vertices.Count].Point);
        Vector after = Vector.Of(vertices[(index + 1) % vertices.Count].Point) - Vector.Of(here.Point);
        return before.Unit.Dot(after.Unit) < CornerCosine;
    }

    private static OutlineEdge EdgeFrom(ImmutableArray<Point> points, ImmutableArray<int> corners, int index)
    {
        int start = corners[index];
        int next = (index + 1) % corners.Length;
        int end = index + 1 < corners.Length ? corners[next] : points.Length + corners[0];
        ImmutableArray<Point> run = [.. Enumerable.Range(start, end - start + 1).Select(i => points[i % points.Length])];
        return new OutlineEdge(LetterOf(index), LetterOf(next), run);
    }
}
