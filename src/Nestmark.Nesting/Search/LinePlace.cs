namespace Nestmark.Nesting.Search;

/// <summary>A place on a line, and the edge that it touches.</summary>
/// <param name="At">Distance along the line in micrometers.</param>
/// <param name="Other">The item whose no-fit polygon is touched; -1 at an end of the line.</param>
/// <param name="Edge">Index of the edge touched.</param>
internal readonly record struct LinePlace(float At, int Other, int Edge);
