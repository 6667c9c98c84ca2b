namespace Nestmark.Geometry;

/// <summary>One vertex of a drawn outline, with what it was in the drawing.</summary>
public readonly record struct OutlineVertex(Point Point, VertexKind Kind);
