namespace Nestmark.Nesting.Search;

/// <summary>Where a shape asks how crowded it is: the middle of one of its circles.</summary>
/// <param name="X">Seen from the shape's origin, in cells.</param>
/// <param name="Y">As <paramref name="X"/>.</param>
/// <param name="Offset">Of the cells that tell of circles of about its size, within a column.</param>
internal readonly record struct CrowdProbe(float X, float Y, int Offset);
