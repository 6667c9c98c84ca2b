using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A straight line from start to end: a grainline, a fold edge.</summary>
public sealed record Segment(Point Start, Point End);
