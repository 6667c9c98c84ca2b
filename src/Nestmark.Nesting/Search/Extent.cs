namespace Nestmark.Nesting.Search;

/// <summary>An upright rectangle in single precision, micrometers.</summary>
internal readonly record struct Extent(float MinX, float MaxX, float MinY, float MaxY);
