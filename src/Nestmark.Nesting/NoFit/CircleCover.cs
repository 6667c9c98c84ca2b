using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Nestmark.Geometry;

namespace Nestmark.Nesting.NoFit;

/// <summary>Circles that nearly fill a shape, and how much those of two shapes overlap.</summary>
internal sealed class CircleCover
{
    private const int MostCircles = 16;

    /// <summary>Least radius, as a part of that of the largest.</summary>
    private const double LeastRatio = 0.08;

    /// <summary>Depth, as a part of the larger shape's diagonal, below which an overlap of circles fades instead of ending.</summary>
    private const double FadeRatio = 0.003;

    private const float FarAway = 1e12f;

    private readonly int _count;
    private readonly float[] _x;
    private readonly float[] _y;
    private readonly float[] _radius;
    private readonly double _diagonal;

    private CircleCover(ImmutableArray<Circle> circles, Mirroring mirroring, double diagonal)
    {
        _count = circles.Length;
        _diagonal = diagonal;
        int padded = (_count + 7) & ~7;
        _x = new float[padded];
        _y = new float[padded];
        _radius = new float[padded];
        Array.Fill(_x, FarAway);
        for (int i = 0; i < _count; i++)
        {
            Point center = mirroring.Apply(circles[i].Center);
            (_x[i], _y[i], _radius[i]) = (center.X, center.Y, circles[i].Radius.Micrometers);
        }
    }

    /// <summary>The circles in a shape.</summary>
    public static ImmutableArray<Circle> CirclesOf(Polygon shape) => InscribedCircles.Of(shape, MostCircles, LeastRatio);

    /// <summary>The cover of a mirrored shape.</summary>
    /// <param name="shape">As it is.</param>
    /// <param name="circles">Those in it.</param>
    /// <param name="mirroring">How it is mirrored.</param>
    public static CircleCover Of(Polygon shape, ImmutableArray<Circle> circles, Mirroring mirroring)
    {
        Box box = shape.Bounds;
        return new CircleCover(circles, mirroring, Math.Sqrt((double)box.Width * box.Width + (double)box.Height * box.Height));
    }

    /// <summary>Writes down the largest circles: x of all, then y, then radii; where there are fewer, the rest lie far away.</summary>
    /// <param name="circles">Room for eight circles.</param>
    public void CopyLargest(Span<float> circles)
    {
        int each = circles.Length / 3;
        _x.AsSpan(0, each).CopyTo(circles);
        _y.AsSpan(0, each).CopyTo(circles[each..]);
        _radius.AsSpan(0, each).CopyTo(circles[(2 * each)..]);
    }

    /// <summary>How much two shapes overlap, in square micrometers: for each two circles, how deep they overlap times the smaller diameter.</summary>
    /// <param name="moving">The other shape.</param>
    /// <param name="x">Where its origin lies, seen from that of this one, in micrometers.</param>
    /// <param name="y">As <paramref name="x"/>.</param>
    /// <returns>Above zero everywhere: circles that lie apart still count a little, the less the farther.</returns>
    /// <remarks>After J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, section 6.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public float OverlapWith(CircleCover moving, double x, double y)
    {
        float fade = (float)(FadeRatio * Math.Max(_diagonal, moving._diagonal));
        Vector256<float> least = Vector256.Create(fade);
        Vector256<float> square = Vector256.Create(fade * fade);
        Vector256<float> twice = Vector256.Create(2 * fade);
        Vector256<float> sum = Vector256<float>.Zero;
        for (int i = 0; i < moving._count; i++)
        {
            Vector256<float> atX = Vector256.Create(moving._x[i] + (float)x);
            Vector256<float> atY = Vector256.Create(moving._y[i] + (float)y);
            Vector256<float> radius = Vector256.Create(moving._radius[i]);
            for (int j = 0; j < _x.Length; j += 8)
            {
                Vector256<float> awayX = Vector256.LoadUnsafe(ref _x[j]) - atX;
                Vector256<float> awayY = Vector256.LoadUnsafe(ref _y[j]) - atY;
                Vector256<float> other = Vector256.LoadUnsafe(ref _radius[j]);
                Vector256<float> depth = radius + other - Vector256.Sqrt(awayX * awayX + awayY * awayY);
                Vector256<float> faded = Vector256.ConditionalSelect(Vector256.GreaterThanOrEqual(depth, least), depth, square / (twice - depth));
                sum += faded * Vector256.Min(radius, other);
            }
        }
        return 2 * Vector256.Sum(sum);
    }
}
