using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Nesting.NoFit;

/// <summary>A no-fit polygon made ready for the search: single-precision corners around its own center, eight edges at a time.</summary>
/// <remarks>
/// It is grown by <see cref="ClearanceMicrometers"/>, so that a place which the search finds free stays free when it is rounded to whole micrometers.
/// Single precision resolves 0.25 µm at 4 m.
/// </remarks>
internal sealed class PairFit
{
    /// <summary>How far the search keeps two shapes apart, beyond the rounding of places and rings.</summary>
    public const double ClearanceMicrometers = 3;

    /// <summary>How far a corner may stand out of the plain no-fit polygon: clearance times 2√2, the longest of its corners.</summary>
    public const double OverhangMicrometers = 3 * ClearanceMicrometers;

    private const float FarthestStepMicrometers = 20;

    /// <summary>By how much bounds of edges are widened for single precision.</summary>
    private const float RoundingMicrometers = 8;

    /// <summary>Corners of all rings, x of all before y of all; each ring ends with its first corner once more and then with what is no number: an edge to or from there crosses nothing.</summary>
    private readonly float[] _corners;

    /// <summary>Where y begins.</summary>
    private readonly int _second;

    /// <summary>Bounds of each eight edges: x of the middles of all, then y, then half the widths, then half the heights; what is no number meets nothing.</summary>
    private readonly float[] _blocks;
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
        EdgeCount = rings.Sum(ring => ring.Length + 2);
        _second = (EdgeCount + 7) / 8 * 8 + 1;
        _corners = new float[2 * _second];
        Array.Fill(_corners, float.NaN);
        int corner = 0;
        foreach ((double X, double Y)[] ring in rings)
        {
            for (int i = 0; i <= ring.Length; i++, corner++)
            {
                (double x, double y) = ring[i % ring.Length];
                (_corners[corner], _corners[_second + corner]) = ((float)(x - _centerX), (float)(y - _centerY));
            }
            corner++;
        }
        _blocks = BlocksOf(_corners, _second);
    }

    public double MinX { get; }

    public double MaxX { get; }

    public double MinY { get; }

    public double MaxY { get; }

    /// <summary>Edges, those that only lead from ring to ring included.</summary>
    public int EdgeCount { get; }

    /// <summary>Whether a place lies inside the region.</summary>
    public bool Contains(double x, double y)
    {
        Vector256<float> atX = Vector256.Create((float)(x - _centerX));
        Vector256<float> atY = Vector256.Create((float)(y - _centerY));
        Vector256<float> parity = Vector256<float>.Zero;
        ref float first = ref _corners[0];
        ref float second = ref _corners[_second];
        for (nuint i = 0; i < (nuint)EdgeCount; i += 8)
        {
            Vector256<float> startX = Vector256.LoadUnsafe(ref first, i);
            Vector256<float> startY = Vector256.LoadUnsafe(ref second, i);
            Vector256<float> endY = Vector256.LoadUnsafe(ref second, i + 1);
            Vector256<float> edgeX = Vector256.LoadUnsafe(ref first, i + 1) - startX;
            Vector256<float> edgeY = endY - startY;
            Vector256<float> straddles = Vector256.GreaterThan(startY, atY) ^ Vector256.GreaterThan(endY, atY);
            Vector256<float> isLeft = Vector256.GreaterThan(edgeX * (atY - startY), edgeY * (atX - startX)) ^ Vector256.LessThan(edgeY, Vector256<float>.Zero);
            parity ^= straddles & isLeft;
        }
        return (BitOperations.PopCount(parity.ExtractMostSignificantBits()) & 1) != 0;
    }

    /// <summary>Ends of every edge, seen from the lowest corner of the bounds.</summary>
    public IEnumerable<(double FromX, double FromY, double ToX, double ToY)> EdgesFromCorner()
    {
        double x = _centerX - MinX;
        double y = _centerY - MinY;
        for (int i = 0; i < EdgeCount; i++)
        {
            if (!float.IsNaN(_corners[i] + _corners[i + 1]))
                yield return (_corners[i] + x, _corners[_second + i] + y, _corners[i + 1] + x, _corners[_second + i + 1] + y);
        }
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
        ref float first = ref _corners[0];
        ref float second = ref _corners[_second];
        Vector256<float> atX = Vector256.Create((float)(x - _centerX));
        Vector256<float> atY = Vector256.Create((float)(y - _centerY));
        Vector256<float> lineX = Vector256.Create((float)alongX);
        Vector256<float> lineY = Vector256.Create((float)alongY);
        ref float blocks = ref _blocks[0];
        nuint each = (nuint)_blocks.Length / 4;
        Vector256<float> sizeX = Vector256.Abs(lineX);
        Vector256<float> sizeY = Vector256.Abs(lineY);
        for (nuint eight = 0; eight < each; eight += 8)
        {
            Vector256<float> middleX = Vector256.LoadUnsafe(ref blocks, eight) - atX;
            Vector256<float> middleY = Vector256.LoadUnsafe(ref blocks, each + eight) - atY;
            Vector256<float> reach = sizeX * Vector256.LoadUnsafe(ref blocks, 3 * each + eight) + sizeY * Vector256.LoadUnsafe(ref blocks, 2 * each + eight);
            uint met = Vector256.LessThanOrEqual(Vector256.Abs(lineX * middleY - lineY * middleX), reach).ExtractMostSignificantBits();
            for (; met != 0; met &= met - 1)
            {
                nuint i = 8 * (eight + (nuint)BitOperations.TrailingZeroCount(met));
                Vector256<float> startX = Vector256.LoadUnsafe(ref first, i) - atX;
                Vector256<float> startY = Vector256.LoadUnsafe(ref second, i) - atY;
                Vector256<float> endX = Vector256.LoadUnsafe(ref first, i + 1) - atX;
                Vector256<float> endY = Vector256.LoadUnsafe(ref second, i + 1) - atY;
                Vector256<float> startSide = lineX * startY - lineY * startX;
                Vector256<float> endSide = lineX * endY - lineY * endX;
                Vector256<float> fall = startSide - endSide;
                Vector256<float> straddles = Vector256.GreaterThan(startSide, Vector256<float>.Zero) ^ Vector256.GreaterThan(endSide, Vector256<float>.Zero);
                uint left = (straddles & Vector256.Equals(fall, fall)).ExtractMostSignificantBits();
                if (left == 0)
                    continue;
                Vector256<float> startAt = lineX * startX + lineY * startY;
                Vector256<float> along = lineX * endX + lineY * endY - startAt;
                Vector256<float> at = startAt + startSide / fall * along;
                Vector256<float> step = Vector256.Min(Vector256.Sqrt(along * along + fall * fall) / Vector256.Abs(fall), Vector256.Create(FarthestStepMicrometers));
                for (; left != 0; left &= left - 1)
                {
                    int lane = BitOperations.TrailingZeroCount(left);
                    Insert(crossings, count++, new LineCrossing(at[lane], step[lane], (int)i + lane));
                }
            }
        }
        return count;
    }

    /// <summary>Direction of an edge, a unit vector; 0, 0 for an edge without extent.</summary>
    public (double X, double Y) DirectionOf(int edge)
    {
        double alongX = (double)_corners[edge + 1] - _corners[edge];
        double alongY = (double)_corners[_second + edge + 1] - _corners[_second + edge];
        double length = Math.Sqrt(alongX * alongX + alongY * alongY);
        return length > 0 ? (alongX / length, alongY / length) : (0, 0);
    }

    /// <summary>Bounds of each eight edges, as <see cref="_blocks"/> keeps them; those that only lead from ring to ring have none.</summary>
    private static float[] BlocksOf(float[] corners, int second)
    {
        int count = second / 8;
        int each = (count + 7) & ~7;
        float[] blocks = new float[4 * each];
        Array.Fill(blocks, float.NaN);
        for (int block = 0; block < count; block++)
        {
            float[] x = [.. corners.AsSpan(8 * block, 9).ToArray().Where(found => !float.IsNaN(found))];
            float[] y = [.. corners.AsSpan(second + 8 * block, 9).ToArray().Where(found => !float.IsNaN(found))];
            if (x.Length == 0)
                continue;
            (blocks[block], blocks[2 * each + block]) = ((x.Min() + x.Max()) / 2, (x.Max() - x.Min()) / 2 + RoundingMicrometers);
            (blocks[each + block], blocks[3 * each + block]) = ((y.Min() + y.Max()) / 2, (y.Max() - y.Min()) / 2 + RoundingMicrometers);
        }
        return blocks;
    }

    private static void Insert(Span<LineCrossing> crossings, int count, LineCrossing crossing)
    {
        int at = count;
        for (; at > 0 && crossings[at - 1].At > crossing.At; at--)
            crossings[at] = crossings[at - 1];
        crossings[at] = crossing;
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
