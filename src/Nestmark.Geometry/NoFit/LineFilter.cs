using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Nestmark.Geometry.NoFit;

/// <summary>Leaves out the segments that certainly lie on one side of a line, several at a time in double precision; what is left is to be decided exactly.</summary>
internal sealed class LineFilter
{
    /// <summary>More than the relative error of a product and two sums in double precision, 2⁻⁵¹.</summary>
    private const double RelativeError = 1e-15;

    private const int Lanes = 4;

    private readonly double[] _startX;
    private readonly double[] _startY;
    private readonly double[] _endX;
    private readonly double[] _endY;
    private readonly int[] _near;
    private readonly int _count;
    private readonly double _reach;

    public LineFilter(List<ConvolutionSegment> segments)
    {
        _count = segments.Count;
        int padded = (_count + Lanes - 1) / Lanes * Lanes;
        _startX = new double[padded];
        _startY = new double[padded];
        _endX = new double[padded];
        _endY = new double[padded];
        _near = new int[padded];
        for (int i = 0; i < _count; i++)
        {
            ConvolutionSegment segment = segments[i];
            (_startX[i], _startY[i]) = (segment.Start.X, segment.Start.Y);
            (_endX[i], _endY[i]) = (segment.End.X, segment.End.Y);
            _reach = Math.Max(_reach, Math.Max(Math.Abs(_startX[i]), Math.Abs(_startY[i])));
        }
    }

    /// <summary>Indices, rising, of all segments that touch the line or cross it, and of a few that come within rounding of it; good until the next call.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ReadOnlySpan<int> Near(Point start, Point direction)
    {
        double alongX = direction.X;
        double alongY = direction.Y;
        double offset = alongX * start.Y - alongY * start.X;
        double margin = RelativeError * 8 * _reach * (Math.Abs(alongX) + Math.Abs(alongY));
        Vector256<double> atX = Vector256.Create(alongX);
        Vector256<double> atY = Vector256.Create(alongY);
        Vector256<double> high = Vector256.Create(offset + margin);
        Vector256<double> low = Vector256.Create(offset - margin);
        int found = 0;
        for (int i = 0; i < _count; i += Lanes)
        {
            Vector256<double> ofStart = atX * Vector256.LoadUnsafe(ref _startY[i]) - atY * Vector256.LoadUnsafe(ref _startX[i]);
            Vector256<double> ofEnd = atX * Vector256.LoadUnsafe(ref _endY[i]) - atY * Vector256.LoadUnsafe(ref _endX[i]);
            Vector256<double> apart = Vector256.GreaterThan(Vector256.Min(ofStart, ofEnd), high) | Vector256.LessThan(Vector256.Max(ofStart, ofEnd), low);
            for (uint near = ~apart.ExtractMostSignificantBits() & 0xF; near != 0; near &= near - 1)
                _near[found++] = i + BitOperations.TrailingZeroCount(near);
        }
        while (found > 0 && _near[found - 1] >= _count)
            found--;
        return _near.AsSpan(0, found);
    }
}
