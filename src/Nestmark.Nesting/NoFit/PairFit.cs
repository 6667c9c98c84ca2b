using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Nesting.NoFit;

/// <summary>A no-fit polygon made ready for the search: single-precision edges around its own center, eight at a time.</summary>
/// <remarks>
/// It is grown by <see cref="ClearanceMicrometers"/>, so that a place which the search finds free stays free when it is rounded to whole micrometers.
/// Single precision resolves 0.25 µm at 4 m.
/// </remarks>
internal sealed class PairFit
{
    /// <summary>How far the search keeps two shapes apart, beyond the rounding of places and rings.</summary>
    public const double ClearanceMicrometers = 3;

    private const float FarAway = 3e18f;

    private readonly float[] _startX;
    private readonly float[] _startY;
    private readonly float[] _endX;
    private readonly float[] _endY;
    private readonly float[] _alongX;
    private readonly float[] _alongY;
    private readonly float[] _inverseSquare;
    private readonly double _centerX;
    private readonly double _centerY;

    public PairFit(NoFitRegion region)
    {
        List<(double X, double Y)[]> rings = [.. region.Rings.Select(Grown).OfType<(double X, double Y)[]>()];
        MinX = rings.Min(ring => ring.Min(point => point.X));
        MaxX = rings.Max(ring => ring.Max(point => point.X));
        MinY = rings.Min(ring => ring.Min(point => point.Y));
        MaxY = rings.Max(ring => ring.Max(point => point.Y));
        _centerX = Math.Round((MinX + MaxX) / 2);
        _centerY = Math.Round((MinY + MaxY) / 2);
        EdgeCount = rings.Sum(ring => ring.Length);
        int padded = (EdgeCount + 7) & ~7;
        _startX = Filled(padded, FarAway);
        _startY = Filled(padded, FarAway);
        _endX = Filled(padded, FarAway);
        _endY = Filled(padded, FarAway);
        _alongX = new float[padded];
        _alongY = new float[padded];
        _inverseSquare = new float[padded];
        int edge = 0;
        foreach ((double X, double Y)[] ring in rings)
        {
            for (int i = 0; i < ring.Length; i++)
                SetEdge(edge++, ring[i], ring[(i + 1) % ring.Length]);
        }
    }

    public double MinX { get; }

    public double MaxX { get; }

    public double MinY { get; }

    public double MaxY { get; }

    public int EdgeCount { get; }

    /// <summary>How far the place lies inside the region: the distance to its boundary in micrometers, or 0 outside.</summary>
    public float Depth(double x, double y)
    {
        float placeX = (float)(x - _centerX);
        float placeY = (float)(y - _centerY);
        Vector256<float> atX = Vector256.Create(placeX);
        Vector256<float> atY = Vector256.Create(placeY);
        Vector256<float> nearest = Vector256.Create(float.MaxValue);
        Vector256<float> parity = Vector256<float>.Zero;
        Vector256<float> zero = Vector256<float>.Zero;
        Vector256<float> one = Vector256<float>.One;
        ref float startX = ref _startX[0];
        ref float startY = ref _startY[0];
        ref float endY = ref _endY[0];
        ref float alongX = ref _alongX[0];
        ref float alongY = ref _alongY[0];
        ref float inverse = ref _inverseSquare[0];
        for (nuint i = 0; i < (nuint)_startX.Length; i += 8)
        {
            Vector256<float> edgeX = Vector256.LoadUnsafe(ref alongX, i);
            Vector256<float> edgeY = Vector256.LoadUnsafe(ref alongY, i);
            Vector256<float> fromY = Vector256.LoadUnsafe(ref startY, i);
            Vector256<float> offX = atX - Vector256.LoadUnsafe(ref startX, i);
            Vector256<float> offY = atY - fromY;
            Vector256<float> part = (offX * edgeX + offY * edgeY) * Vector256.LoadUnsafe(ref inverse, i);
            part = Vector256.Min(Vector256.Max(part, zero), one);
            Vector256<float> awayX = offX - part * edgeX;
            Vector256<float> awayY = offY - part * edgeY;
            nearest = Vector256.Min(nearest, awayX * awayX + awayY * awayY);
            Vector256<float> straddles = Vector256.GreaterThan(fromY, atY) ^ Vector256.GreaterThan(Vector256.LoadUnsafe(ref endY, i), atY);
            Vector256<float> isLeft = Vector256.GreaterThan(edgeX * offY, edgeY * offX) ^ Vector256.LessThan(edgeY, zero);
            parity ^= straddles & isLeft;
        }
        uint bits = parity.ExtractMostSignificantBits();
        if ((BitOperations.PopCount(bits) & 1) == 0)
            return 0;
        Vector128<float> half = Vector128.Min(nearest.GetLower(), nearest.GetUpper());
        float least = Math.Min(Math.Min(half[0], half[1]), Math.Min(half[2], half[3]));
        return MathF.Sqrt(least);
    }

    /// <summary>Adds where the horizontal line at y crosses the boundary; an even number of places, rising.</summary>
    public void CrossHorizontal(double y, List<double> crossings)
    {
        int first = crossings.Count;
        float placeY = (float)(y - _centerY);
        for (int i = 0; i < EdgeCount; i++)
        {
            if (_startY[i] > placeY == _endY[i] > placeY)
                continue;
            double part = (placeY - (double)_startY[i]) / ((double)_endY[i] - _startY[i]);
            AddSorted(crossings, first, _startX[i] + part * _alongX[i] + _centerX);
        }
    }

    /// <summary>Adds where the upright line at x crosses the boundary; an even number of places, rising.</summary>
    public void CrossUpright(double x, List<double> crossings)
    {
        int first = crossings.Count;
        float placeX = (float)(x - _centerX);
        for (int i = 0; i < EdgeCount; i++)
        {
            if (_startX[i] > placeX == _endX[i] > placeX)
                continue;
            double part = (placeX - (double)_startX[i]) / ((double)_endX[i] - _startX[i]);
            AddSorted(crossings, first, _startY[i] + part * _alongY[i] + _centerY);
        }
    }

    private static void AddSorted(List<double> crossings, int first, double crossing)
    {
        int at = crossings.Count;
        crossings.Add(crossing);
        for (; at > first && crossings[at - 1] > crossing; at--)
            crossings[at] = crossings[at - 1];
        crossings[at] = crossing;
    }

    private void SetEdge(int edge, (double X, double Y) start, (double X, double Y) end)
    {
        _startX[edge] = (float)(start.X - _centerX);
        _startY[edge] = (float)(start.Y - _centerY);
        _endX[edge] = (float)(end.X - _centerX);
        _endY[edge] = (float)(end.Y - _centerY);
        _alongX[edge] = _endX[edge] - _startX[edge];
        _alongY[edge] = _endY[edge] - _startY[edge];
        double square = (double)_alongX[edge] * _alongX[edge] + (double)_alongY[edge] * _alongY[edge];
        _inverseSquare[edge] = square > 0 ? (float)(1 / square) : 0;
    }

    private static float[] Filled(int length, float value)
    {
        float[] array = new float[length];
        Array.Fill(array, value);
        return array;
    }

    /// <summary>The ring moved outward by the clearance; <c>null</c> for a hole too small to keep any of its inside.</summary>
    private static (double X, double Y)[]? Grown(ImmutableArray<Point> ring)
    {
        Box box = Box.Around(ring.AsSpan());
        bool isHole = Polygon.TwiceSignedArea(ring.AsSpan()) < 0;
        if (isHole && Math.Min(box.Width, box.Height) < 8 * ClearanceMicrometers)
            return null;
        (double X, double Y)[] grown = new (double X, double Y)[ring.Length];
        for (int i = 0; i < ring.Length; i++)
            grown[i] = Pushed(ring[(i + ring.Length - 1) % ring.Length], ring[i], ring[(i + 1) % ring.Length]);
        return grown;
    }

    private static (double X, double Y) Pushed(Point before, Point here, Point after)
    {
        (double X, double Y) first = OutwardNormal(here - before);
        (double X, double Y) second = OutwardNormal(after - here);
        double scale = ClearanceMicrometers / Math.Max(0.25, 1 + first.X * second.X + first.Y * second.Y);
        return (here.X + scale * (first.X + second.X), here.Y + scale * (first.Y + second.Y));
    }

    private static (double X, double Y) OutwardNormal(Point along)
    {
        double length = Math.Sqrt((double)along.X * along.X + (double)along.Y * along.Y);
        return (along.Y / length, -along.X / length);
    }
}
