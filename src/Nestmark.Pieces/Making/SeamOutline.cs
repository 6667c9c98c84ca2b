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

    private SeamOutline(ImmutableArray<Point> points, ImmutableArray<int> corners, ImmutableArray<string> letters)
    {
        Points = points;
        Corners = [.. corners.Select((index, i) => new PieceCorner(letters[i], points[index]))];
        Edges = [.. corners.Select((_, i) => EdgeFrom(points, corners, letters, i))];
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
    /// <param name="outline">As drawn, either way round.</param>
    /// <param name="lettered">The corners, where they have letters already; empty to find them by their turns.</param>
    public static SeamOutline? Of(ImmutableArray<OutlineVertex> outline, ImmutableArray<PieceCorner> lettered)
    {
        List<OutlineVertex> vertices = Distinct(outline);
        Point[] points = [.. vertices.Select(vertex => vertex.Point)];
        Int128 area = Polygon.TwiceSignedArea(points);
        if (vertices.Count < 3 || area == 0)
            return null;
        if (area < 0)
            vertices.Reverse();
        return lettered.IsEmpty ? FromFirstCorner(vertices) : FromLetters(vertices, lettered);
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
        ImmutableArray<int> indices = corners.Count > 0 ? [.. corners.Select(i => (i - first + count) % count).Order()] : [0];
        return new SeamOutline(points, indices, [.. indices.Select((_, i) => CornerLetters.Of(i))]);
    }

    /// <summary>From the first of the letters on; each stands at the vertex nearest to its place.</summary>
    private static SeamOutline FromLetters(List<OutlineVertex> vertices, ImmutableArray<PieceCorner> lettered)
    {
        int count = vertices.Count;
        int[] places = [.. lettered.Select(corner => Enumerable.Range(0, count).MinBy(i => (Vector.Of(vertices[i].Point) - Vector.Of(corner.Place)).Norm))];
        int first = places[0];
        (int Index, string Letter)[] ordered =
        [
            .. places.Select((place, i) => (Index: (place - first + count) % count, lettered[i].Letter)).DistinctBy(pair => pair.Index).OrderBy(pair => pair.Index),
        ];
        ImmutableArray<Point> points = [.. Enumerable.Range(0, count).Select(i => vertices[(first + i) % count].Point)];
        return new SeamOutline(points, [.. ordered.Select(pair => pair.Index)], [.. ordered.Select(pair => pair.Letter)]);
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

    private static OutlineEdge EdgeFrom(ImmutableArray<Point> points, ImmutableArray<int> corners, ImmutableArray<string> letters, int index)
    {
        int start = corners[index];
        int next = (index + 1) % corners.Length;
        int end = index + 1 < corners.Length ? corners[next] : points.Length + corners[0];
        ImmutableArray<Point> run = [.. Enumerable.Range(start, end - start + 1).Select(i => points[i % points.Length])];
        return new OutlineEdge(letters[index], letters[next], run);
    }
}
