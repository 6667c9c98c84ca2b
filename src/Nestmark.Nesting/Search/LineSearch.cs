using System.Numerics;
using System.Runtime.Intrinsics;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Finds the best place on a line among those where a no-fit polygon begins or ends.</summary>
/// <remarks>
/// An overlap counts a good deal as soon as there is one, so the least value on a line nearly always lies just outside one of the crossings, or at an end. The places between are not tried.
/// The stretches inside each no-fit polygon tell which of them a place is inside, so that no other is asked.
/// </remarks>
internal sealed class LineSearch(int itemCount)
{
    private readonly int[] _near = new int[itemCount];
    private float[] _enter = new float[64];
    private float[] _leave = new float[64];
    private int[] _inside = new int[64];
    private LinePlace[] _places = new LinePlace[128];
    private int _stretchCount;
    private int _placeCount;

    /// <summary>Places judged so far.</summary>
    public long JudgedPlaces { get; private set; }

    /// <summary>The best place on a line.</summary>
    /// <param name="overlaps">Ready to judge places of the item.</param>
    /// <param name="line">The line.</param>
    /// <param name="limit">Value to be bettered.</param>
    /// <param name="value">The value there; the limit when it is not bettered.</param>
    /// <returns>The place; at distance 0 when the limit is not bettered.</returns>
    public LinePlace Best(Overlaps overlaps, SearchLine line, float limit, out float value)
    {
        value = limit;
        LinePlace best = new(0, -1, 0);
        if (line.Low >= line.High)
            return best;
        Collect(overlaps, line);
        for (int i = 0; i < _placeCount && value > 0; i++)
        {
            LinePlace place = _places[i];
            float found = Value(overlaps, line, place.At, value);
            if (found < value)
                (best, value) = (place, found);
        }
        return best;
    }

    private void Collect(Overlaps overlaps, SearchLine line)
    {
        (_stretchCount, _placeCount) = (0, 0);
        if (line.Low < 0)
            Add(new LinePlace((float)line.Low, -1, 0));
        if (line.High > 0)
            Add(new LinePlace((float)line.High, -1, 0));
        int near = overlaps.Near(line, _near);
        for (int i = 0; i < near; i++)
        {
            ReadOnlySpan<LineCrossing> crossings = overlaps.Cross(_near[i], line);
            for (int j = 0; j + 1 < crossings.Length; j += 2)
                AddStretch(line, _near[i], crossings[j], crossings[j + 1]);
        }
        for (int i = _stretchCount; (i & 7) != 0; i++)
            _enter[i] = float.PositiveInfinity;
    }

    private void AddStretch(SearchLine line, int other, LineCrossing enter, LineCrossing leave)
    {
        if (leave.At < line.Low || enter.At > line.High)
            return;
        if (_stretchCount == _inside.Length)
        {
            Array.Resize(ref _enter, 2 * _stretchCount);
            Array.Resize(ref _leave, 2 * _stretchCount);
            Array.Resize(ref _inside, 2 * _stretchCount);
        }
        _enter[_stretchCount] = enter.At;
        _leave[_stretchCount] = leave.At;
        _inside[_stretchCount++] = other;
        float before = enter.At - enter.Step;
        if (before >= line.Low)
            Add(new LinePlace(before, other, enter.Edge));
        float after = leave.At + leave.Step;
        if (after <= line.High)
            Add(new LinePlace(after, other, leave.Edge));
    }

    private void Add(LinePlace place)
    {
        if (_placeCount == _places.Length)
            Array.Resize(ref _places, 2 * _placeCount);
        _places[_placeCount++] = place;
    }

    private float Value(Overlaps overlaps, SearchLine line, float at, float limit)
    {
        JudgedPlaces++;
        float sum = 0;
        double x = line.X + at * line.AlongX;
        double y = line.Y + at * line.AlongY;
        Vector256<float> here = Vector256.Create(at);
        for (int i = 0; i < _stretchCount; i += 8)
        {
            Vector256<float> inside = Vector256.GreaterThan(here, Vector256.LoadUnsafe(ref _enter[i])) & Vector256.LessThan(here, Vector256.LoadUnsafe(ref _leave[i]));
            for (uint left = inside.ExtractMostSignificantBits(); left != 0; left &= left - 1)
            {
                sum += overlaps.ValueInside(_inside[i + BitOperations.TrailingZeroCount(left)], x, y);
                if (sum >= limit)
                    return sum;
            }
        }
        return sum;
    }
}
