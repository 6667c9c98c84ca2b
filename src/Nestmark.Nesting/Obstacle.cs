using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>A place on the lay where nothing, or only what bears it, may lie.</summary>
/// <param name="Area">In micrometers of the lay.</param>
/// <param name="Kind">What it is.</param>
public sealed record Obstacle(Polygon Area, ObstacleKind Kind);
