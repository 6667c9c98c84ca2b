using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>The largest circles in each shape, side by side, each made when first asked for: they tell of most bad places that they are bad, and no pair need be looked up for it.</summary>
/// <remarks>A long lay has thousands of pairs, which lie anywhere in memory; its shapes are few. Safe for several threads.</remarks>
internal sealed class LargestCircles
{
    /// <summary>Circles of a still shape.</summary>
    private const int Still = 8;

    /// <summary>Those of them that count in a moving shape.</summary>
    private const int Moving = 4;

    private const int Length = 3 * Still;

    private readonly float[] _circles;
    private readonly float[] _roots;
    private readonly bool[] _isFilled;
    private readonly PairFits _fits;
    private readonly Lock _filling = new();

    /// <param name="shapes">The shapes.</param>
    /// <param name="fits">Knows their circles.</param>
    public LargestCircles(SearchShape[] shapes, PairFits fits)
    {
        _fits = fits;
        _circles = new float[shapes.Length * Length];
        double meanSize = SearchShape.MeanSizeMicrometers(shapes);
        _roots = [.. shapes.Select(shape => (float)Math.Sqrt(Math.Sqrt(2) * shape.SizeMicrometers / meanSize))];
        _isFilled = new bool[shapes.Length];
    }

    /// <summary>Severity at a place as far as the largest circles alone make it out: seldom more than that of the pair, which counts all of them.</summary>
    /// <param name="still">A shape.</param>
    /// <param name="moving">Another.</param>
    /// <param name="x">Where the moving shape lies, seen from the still one, in micrometers.</param>
    /// <param name="y">As <paramref name="x"/>.</param>
    /// <returns>0 where these circles do not overlap.</returns>
    public float LeastSeverity(int still, int moving, float x, float y)
    {
        ref float first = ref CirclesOf(still);
        ref float second = ref CirclesOf(moving);
        Vector256<float> stillX = Vector256.LoadUnsafe(ref first);
        Vector256<float> stillY = Vector256.LoadUnsafe(ref first, Still);
        Vector256<float> stillRadius = Vector256.LoadUnsafe(ref first, 2 * Still);
        Vector256<float> sum = Vector256<float>.Zero;
        for (int i = 0; i < Moving; i++)
        {
            Vector256<float> radius = Vector256.Create(Unsafe.Add(ref second, 2 * Still + i));
            Vector256<float> awayX = stillX - Vector256.Create(Unsafe.Add(ref second, i) + x);
            Vector256<float> awayY = stillY - Vector256.Create(Unsafe.Add(ref second, Still + i) + y);
            Vector256<float> depth = radius + stillRadius - Vector256.Sqrt(awayX * awayX + awayY * awayY);
            sum += Vector256.Max(depth, Vector256<float>.Zero) * Vector256.Min(radius, stillRadius);
        }
        float overlap = Vector256.Sum(sum);
        return overlap > 0 ? MathF.Sqrt(overlap) * _roots[still] * _roots[moving] : 0;
    }

    /// <summary>The circles of a shape, the largest first, in micrometers.</summary>
    public IEnumerable<(double X, double Y, double Radius)> Of(int shape)
    {
        _ = CirclesOf(shape);
        float[] circles = _circles[(shape * Length)..((shape + 1) * Length)];
        return Enumerable.Range(0, Still)
            .Where(i => i == 0 || circles[2 * Still + i] > 0)
            .Select(i => ((double)circles[i], (double)circles[Still + i], (double)circles[2 * Still + i]));
    }

    private ref float CirclesOf(int shape)
    {
        if (!Volatile.Read(ref _isFilled[shape]))
            Fill(shape);
        return ref _circles[shape * Length];
    }

    private void Fill(int shape)
    {
        lock (_filling)
        {
            if (_isFilled[shape])
                return;
            _fits.CoverOf(shape).CopyLargest(_circles.AsSpan(shape * Length, Length));
            Volatile.Write(ref _isFilled[shape], true);
        }
    }
}
