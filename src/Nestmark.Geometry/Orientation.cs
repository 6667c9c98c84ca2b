namespace Nestmark.Geometry;

/// <summary>On which side of a directed line a point lies; exact.</summary>
public static class Orientation
{
    /// <summary>1 when c lies left of the line from a to b, -1 when right, 0 when on it.</summary>
    /// <remarks>Coordinates within ±1 km keep the products below 2^63; see DEVELOPERS.md, exactness.</remarks>
    public static int Of(Point a, Point b, Point c) => Math.Sign(Cross(b - a, c - a));

    /// <summary>Cross product of two displacements, exact for displacements within ±2 km.</summary>
    public static long Cross(Point left, Point right) => left.X * right.Y - left.Y * right.X;

    /// <summary>Dot product of two displacements, exact for displacements within ±2 km.</summary>
    public static long Dot(Point left, Point right) => left.X * right.X + left.Y * right.Y;
}
