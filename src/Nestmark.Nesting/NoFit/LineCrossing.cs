namespace Nestmark.Nesting.NoFit;

/// <summary>Where a line crosses an edge of a no-fit polygon.</summary>
/// <param name="At">Distance along the line in micrometers.</param>
/// <param name="Step">How far to go along the line, beyond the crossing, to stand one micrometer off the edge.</param>
/// <param name="Edge">Index of the edge.</param>
internal readonly record struct LineCrossing(float At, float Step, int Edge);
