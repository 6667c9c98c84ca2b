namespace Nestmark.Geometry;

/// <summary>On which side of a directed line a point lies; exact.</summary>
public static class Orientation
{
    private const long Small = 1L << 30;

    /// <summary>1 when c lies left of the line from a to b, -1 when right, 0 when on it.</summary>
    /// <remarks>Products of displacements below 2^30 fit 64 bits; larger ones are taken in 128.</remarks>
    public static int Of(Point a, Point b, Point c)
    {
        Point ab = b - a;
        Point ac = c - a;
        bool isSmall = (ulong)(ab.X + Small) < 2 * Small && (ulong)(ab.Y + Small) < 2 * Small
            && (ulong)(ac.X + Small) < 2 * Small && (ulong)(ac.Y + Small) < 2 * Small;
        return isSmall
            ? Math.Sign(ab.X * ac.Y - ab.Y * ac.X)
            : Int128.Sign((Int128)ab.X * ac.Y - (Int128)ab.Y * ac.X);
    }

    /// <summary>Cross product of two displacements, exact for displacements within ±2 km.</summary>
    public static long Cross(Point left, Point right) => left.X * right.Y - left.Y * right.X;

    /// <summary>Dot product of two displacements, exact for displacements within ±2 km.</summary>
    public static long Dot(Point left, Point right) => left.X * right.X + left.Y * right.Y;
}
