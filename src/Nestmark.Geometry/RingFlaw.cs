namespace Nestmark.Geometry;

/// <summary>A place where a ring meets itself.</summary>
/// <param name="Kind">How.</param>
/// <param name="Place">Where, rounded to the nearest micrometer for a crossing.</param>
/// <param name="FirstEdge">The edge that starts at this vertex index; the lower of the two.</param>
/// <param name="SecondEdge">The edge that starts at this vertex index.</param>
public readonly record struct RingFlaw(RingFlawKind Kind, Point Place, int FirstEdge, int SecondEdge);
