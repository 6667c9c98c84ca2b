namespace Nestmark.Geometry;

/// <summary>A circle. <c>default</c> is the point at the origin.</summary>
/// <param name="Center">Its center, in micrometers.</param>
/// <param name="Radius">Zero or more.</param>
public readonly record struct Circle(Point Center, Length Radius);
