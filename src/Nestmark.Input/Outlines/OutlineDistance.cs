using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Input.Outlines;

/// <summary>The place on an outline that is nearest to a point.</summary>
/// <param name="Edge">Index of the vertex where its edge starts.</param>
/// <param name="Place">The nearest place.</param>
/// <param name="Distance">How far it is.</param>
internal readonly record struct OutlineDistance(int Edge, Point Place, Length Distance)
{
    private static readonly Length VertexReach = Length.FromMillimeters(1);

    /// <summary>The nearest place; the first of several.</summary>
    public static OutlineDistance Nearest(ImmutableArray<OutlineVertex> outline, Point point)
    {
        OutlineDistance nearest = new(0, outline[0].Point, outline[0].Point.DistanceTo(point));
        for (int i = 0; i < outline.Length; i++)
        {
            Point place = PointLocation.NearestOnSegment(outline[i].Point, outline[(i + 1) % outline.Length].Point, point);
            Length distance = place.DistanceTo(point);
            if (distance < nearest.Distance)
                nearest = new OutlineDistance(i, place, distance);
        }
        return nearest;
    }

    /// <summary>The outline with a marked corner here: the vertex within 1 mm, or a new one.</summary>
    public ImmutableArray<OutlineVertex> Marked(ImmutableArray<OutlineVertex> outline)
    {
        int next = (Edge + 1) % outline.Length;
        bool nextIsNearer = outline[next].Point.DistanceTo(Place) < outline[Edge].Point.DistanceTo(Place);
        int vertex = nextIsNearer ? next : Edge;
        return outline[vertex].Point.DistanceTo(Place) <= VertexReach
            ? outline.SetItem(vertex, outline[vertex] with { Kind = VertexKind.Marked })
            : outline.Insert(Edge + 1, new OutlineVertex(Place, VertexKind.Marked));
    }
}
