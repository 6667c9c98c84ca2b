using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Nestmark.Geometry.NoFit;

/// <summary>Leaves out the edges of a ring whose directions certainly lie outside a wedge, several at a time in double precision; what is left is to be decided exactly.</summary>
internal sealed class DirectionFilter
{
    private const double RelativeError = 1e-15;

    private const int Lanes = 4;

    private readonly double[] _alongX;
    private readonly double[] _alongY;
    private readonly int[] _within;
    private readonly int _count;
    private readonly double _longest;

    public DirectionFilter(ReadOnlySpan<Point> ring)
    {
        _count = ring.Length;
        int padded = (_count + Lanes - 1) / Lanes * Lanes;
        _alongX = new double[padded];
        _alongY = new double[padded];
        _within = new int[padded];
        for (int i = 0; i < _count; i++)
        {
            Point along = ring[i + 1 == _count ? 0 : i + 1] - ring[i];
            (_alongX[i], _alongY[i]) = (along.X, along.Y);
            _longest = Math.Max(_longest, Math.Max(Math.Abs(_alongX[i]), Math.Abs(_alongY[i])));
        }
    }

    /// <summary>Indices, rising, of all edges whose directions lie from one direction counter-clockwise to another less than half a turn on, and of a few that come within rounding of it; good until the next call.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ReadOnlySpan<int> Within(Point low, Point high)
    {
        double widest = Math.Max(Math.Max(Math.Abs((double)low.X), Math.Abs((double)low.Y)), Math.Max(Math.Abs((double)high.X), Math.Abs((double)high.Y)));
        Vector256<double> margin = Vector256.Create(-RelativeError * 4 * _longest * widest);
        Vector256<double> lowX = Vector256.Create((double)low.X);
        Vector256<double> lowY = Vector256.Create((double)low.Y);
        Vector256<double> highX = Vector256.Create((double)high.X);
        Vector256<double> highY = Vector256.Create((double)high.Y);
        int found = 0;
        for (int i = 0; i < _count; i += Lanes)
        {
            Vector256<double> x = Vector256.LoadUnsafe(ref _alongX[i]);
            Vector256<double> y = Vector256.LoadUnsafe(ref _alongY[i]);
            Vector256<double> inside = Vector256.GreaterThanOrEqual(lowX * y - lowY * x, margin) & Vector256.GreaterThanOrEqual(x * highY - y * highX, margin);
            for (uint within = inside.ExtractMostSignificantBits(); within != 0; within &= within - 1)
                _within[found++] = i + BitOperations.TrailingZeroCount(within);
        }
        while (found > 0 && _within[found - 1] >= _count)
            found--;
        return _within.AsSpan(0, found);
    }
}
