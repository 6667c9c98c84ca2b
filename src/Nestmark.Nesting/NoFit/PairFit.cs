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

    /// <summary>Edges lie in blocks of eight: their starts in x and y, their ends in x and y, and their lengths.</summary>
    private const int BlockLength = 40;

    private const float FarthestStepMicrometers = 20;

    private readonly float[] _edges;
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
        _edges = new float[(EdgeCount + 7) / 8 * BlockLength];
        for (int spare = EdgeCount; spare < (EdgeCount + 7) / 8 * 8; spare++)
            SetEdge(spare, FarAway, FarAway, FarAway, FarAway);
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

    /// <summary>Whether a place lies inside the region.</summary>
    public bool Contains(double x, double y)
    {
        Vector256<float> atX = Vector256.Create((float)(x - _centerX));
        Vector256<float> atY = Vector256.Create((float)(y - _centerY));
        Vector256<float> parity = Vector256<float>.Zero;
        float[] edges = _edges;
        ref float first = ref edges[0];
        for (nuint i = 0; i < (nuint)edges.Length; i += BlockLength)
        {
            Vector256<float> startX = Vector256.LoadUnsafe(ref first, i);
            Vector256<float> startY = Vector256.LoadUnsafe(ref first, i + 8);
            Vector256<float> endY = Vector256.LoadUnsafe(ref first, i + 24);
            Vector256<float> edgeX = Vector256.LoadUnsafe(ref first, i + 16) - startX;
            Vector256<float> edgeY = endY - startY;
            Vector256<float> straddles = Vector256.GreaterThan(startY, atY) ^ Vector256.GreaterThan(endY, atY);
            Vector256<float> isLeft = Vector256.GreaterThan(edgeX * (atY - startY), edgeY * (atX - startX)) ^ Vector256.LessThan(edgeY, Vector256<float>.Zero);
            parity ^= straddles & isLeft;
        }
        return (BitOperations.PopCount(parity.ExtractMostSignificantBits()) & 1) != 0;
    }

    /// <summary>Ends of an edge, seen from the lowest corner of the bounds.</summary>
    public (double FromX, double FromY, double ToX, double ToY) EdgeFromCorner(int edge)
    {
        ReadOnlySpan<float> block = _edges.AsSpan(edge / 8 * BlockLength + edge % 8);
        double x = _centerX - MinX;
        double y = _centerY - MinY;
        return (block[0] + x, block[8] + y, block[16] + x, block[24] + y);
    }

    /// <summary>Where a line crosses the boundary: an even number of places, rising.</summary>
    /// <param name="x">A point of the line.</param>
    /// <param name="y">As <paramref name="x"/>.</param>
    /// <param name="alongX">Direction of the line, a unit vector.</param>
    /// <param name="alongY">As <paramref name="alongX"/>.</param>
    /// <param name="crossings">Room for as many as there are edges.</param>
    /// <returns>How many there are.</returns>
    public int Cross(double x, double y, double alongX, double alongY, Span<LineCrossing> crossings)
    {
        int count = 0;
        float[] edges = _edges;
        ref float first = ref edges[0];
        Vector256<float> atX = Vector256.Create((float)(x - _centerX));
        Vector256<float> atY = Vector256.Create((float)(y - _centerY));
        Vector256<float> lineX = Vector256.Create((float)alongX);
        Vector256<float> lineY = Vector256.Create((float)alongY);
        for (nuint i = 0; i < (nuint)edges.Length; i += BlockLength)
        {
            Vector256<float> startX = Vector256.LoadUnsafe(ref first, i) - atX;
            Vector256<float> startY = Vector256.LoadUnsafe(ref first, i + 8) - atY;
            Vector256<float> endX = Vector256.LoadUnsafe(ref first, i + 16) - atX;
            Vector256<float> endY = Vector256.LoadUnsafe(ref first, i + 24) - atY;
            Vector256<float> startSide = lineX * startY - lineY * startX;
            Vector256<float> endSide = lineX * endY - lineY * endX;
            Vector256<float> straddles = Vector256.GreaterThan(startSide, Vector256<float>.Zero) ^ Vector256.GreaterThan(endSide, Vector256<float>.Zero);
            uint left = straddles.ExtractMostSignificantBits();
            if (left == 0)
                continue;
            Vector256<float> fall = startSide - endSide;
            Vector256<float> startAt = lineX * startX + lineY * startY;
            Vector256<float> endAt = lineX * endX + lineY * endY;
            Vector256<float> at = startAt + startSide / fall * (endAt - startAt);
            Vector256<float> step = Vector256.Min(Vector256.LoadUnsafe(ref first, i + 32) / Vector256.Abs(fall), Vector256.Create(FarthestStepMicrometers));
            for (; left != 0; left &= left - 1)
            {
                int lane = BitOperations.TrailingZeroCount(left);
                Insert(crossings, count++, new LineCrossing(at[lane], step[lane], (int)i / BlockLength * 8 + lane));
            }
        }
        return count;
    }

    /// <summary>Direction of an edge, a unit vector; 0, 0 for an edge without extent.</summary>
    public (double X, double Y) DirectionOf(int edge)
    {
        ReadOnlySpan<float> block = _edges.AsSpan(edge / 8 * BlockLength + edge % 8);
        return block[32] > 0 ? ((block[16] - block[0]) / (double)block[32], (block[24] - block[8]) / (double)block[32]) : (0, 0);
    }

    private static void Insert(Span<LineCrossing> crossings, int count, LineCrossing crossing)
    {
        int at = count;
        for (; at > 0 && crossings[at - 1].At > crossing.At; at--)
            crossings[at] = crossings[at - 1];
        crossings[at] = crossing;
    }

    private void SetEdge(int edge, (double X, double Y) start, (double X, double Y) end) =>
        SetEdge(edge, (float)(start.X - _centerX), (float)(start.Y - _centerY), (float)(end.X - _centerX), (float)(end.Y - _centerY));

    private void SetEdge(int edge, float startX, float startY, float endX, float endY)
    {
        Span<float> block = _edges.AsSpan(edge / 8 * BlockLength + edge % 8);
        (block[0], block[8], block[16], block[24]) = (startX, startY, endX, endY);
        double alongX = endX - startX;
        double alongY = endY - startY;
        block[32] = (float)Math.Sqrt(alongX * alongX + alongY * alongY);
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
