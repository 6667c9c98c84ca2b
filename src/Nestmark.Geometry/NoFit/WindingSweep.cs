using System.Runtime.CompilerServices;

namespace Nestmark.Geometry.NoFit;

/// <summary>Splits convolution segments where they cross and keeps the stretches that bound the overlap; exact.</summary>
/// <remarks>
/// For each segment its whole line is followed from infinity, once moved to the left and once to the right by an infinitely small amount.
/// Every crossing with another segment is a rational number along the line and changes the winding number by one,
/// so both sides of every stretch are known without building an arrangement. Cost: O(k²) for k segments.
/// </remarks>
internal sealed class WindingSweep
{
    private readonly List<ConvolutionSegment> _segments;
    private readonly LineFilter _filter;
    private readonly List<Event> _events = [];
    private readonly List<Overlay> _collinear = [];
    private readonly List<BoundaryEdge> _boundary = [];
    private readonly List<BoundaryEdge> _slides = [];

    private WindingSweep(List<ConvolutionSegment> segments)
    {
        _segments = segments;
        _filter = new LineFilter(segments);
    }

    /// <summary>Boundary stretches with the overlap on their left, and stretches inside it along which the shapes only touch.</summary>
    public static (List<BoundaryEdge> Boundary, List<BoundaryEdge> Slides) Of(List<ConvolutionSegment> segments)
    {
        WindingSweep sweep = new(segments);
        for (int i = 0; i < segments.Count; i++)
            sweep.Follow(i);
        return (sweep._boundary, sweep._slides);
    }

    private void Follow(int index)
    {
        ConvolutionSegment segment = _segments[index];
        Point direction = segment.End - segment.Start;
        (int left, int right) = Collect(index, segment.Start, direction);
        if (_events.Count > 1)
            _events.Sort();
        Fraction from = Fraction.Zero;
        int next = 0;
        while (true)
        {
            Fraction to = next < _events.Count ? _events[next].Along : Fraction.One;
            Emit(index, from, to, left, right);
            if (next == _events.Count)
                return;
            for (; next < _events.Count && _events[next].Along.CompareTo(to) == 0; next++)
            {
                left += _events[next].LeftStep;
                right += _events[next].RightStep;
            }
            from = to;
        }
    }

    /// <summary>Gathers crossings within the segment; returns the winding numbers on both sides of its start.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (int Left, int Right) Collect(int index, Point start, Point direction)
    {
        _events.Clear();
        _collinear.Clear();
        int left = 0;
        int right = 0;
        foreach (int i in _filter.Near(start, direction))
        {
            ConvolutionSegment other = _segments[i];
            Point toStart = other.Start - start;
            long sideOfStart = Orientation.Cross(direction, toStart);
            long sideOfEnd = Orientation.Cross(direction, other.End - start);
            if (sideOfStart > 0 && sideOfEnd > 0 || sideOfStart < 0 && sideOfEnd < 0)
                continue;
            if (sideOfStart == 0 && sideOfEnd == 0)
            {
                if (i != index)
                    AddCollinear(i, start, direction);
                continue;
            }
            int leftStep = Step(sideOfStart > 0, sideOfEnd > 0);
            int rightStep = Step(sideOfStart >= 0, sideOfEnd >= 0);
            Fraction along = Fraction.Of(Orientation.Cross(toStart, other.End - other.Start), sideOfEnd - sideOfStart);
            if (along.Numerator <= 0)
            {
                left += leftStep;
                right += rightStep;
            }
            else if (along.Numerator < along.Denominator)
            {
                _events.Add(new Event(along, leftStep, rightStep));
            }
        }
        return (left, right);
    }

    private void AddCollinear(int index, Point start, Point direction)
    {
        long length = Orientation.Dot(direction, direction);
        Fraction first = Fraction.Of(Orientation.Dot(_segments[index].Start - start, direction), length);
        Fraction second = Fraction.Of(Orientation.Dot(_segments[index].End - start, direction), length);
        bool isForward = first.CompareTo(second) < 0;
        _collinear.Add(new Overlay(
            index, isForward ? first : second, isForward ? second : first, isForward ? 1 : -1, _segments[index].Sign));
        foreach (Fraction along in (ReadOnlySpan<Fraction>)[first, second])
        {
            if (along.Numerator > 0 && along.Numerator < along.Denominator)
                _events.Add(new Event(along, 0, 0));
        }
    }

    private static int Step(bool startsLeft, bool endsLeft) => startsLeft == endsLeft ? 0 : endsLeft ? -1 : 1;

    private void Emit(int index, Fraction from, Fraction to, int left, int right)
    {
        ConvolutionSegment segment = _segments[index];
        Point direction = segment.End - segment.Start;
        bool leftOverlaps = left > 0;
        bool rightOverlaps = right > 0;
        if (!leftOverlaps && !rightOverlaps)
            return;
        BoundaryEdge edge = new(segment.Start + from.Of(direction), segment.Start + to.Of(direction));
        if (edge.Start == edge.End)
            return;
        if (_collinear.Count > 0 && IsEmittedByEarlier(index, from, to))
            return;
        if (leftOverlaps != rightOverlaps)
            _boundary.Add(leftOverlaps ? edge : edge.Reversed);
        else if (_collinear.Count > 0 && PartsOnLine(segment, from, to, left) == 0)
            _slides.Add(edge.Start < edge.End ? edge : edge.Reversed);
    }

    /// <summary>Whether a segment before this one covers the same stretch, and so has emitted it.</summary>
    private bool IsEmittedByEarlier(int index, Fraction from, Fraction to)
    {
        foreach (Overlay overlay in _collinear)
        {
            if (overlay.Index < index && overlay.Covers(from, to))
                return true;
        }
        return false;
    }

    /// <summary>Overlapping parts for a place exactly on the stretch: those of the left side that do not begin at it, and those split by a reflex corner at it.</summary>
    private int PartsOnLine(ConvolutionSegment segment, Fraction from, Fraction to, int left)
    {
        int parts = left - (segment.Sign > 0 ? 1 : 0);
        foreach (Overlay overlay in _collinear)
        {
            if (!overlay.Covers(from, to))
                continue;
            if (overlay.Way > 0 && overlay.Sign > 0)
                parts--;
            else if (overlay.Way < 0 && overlay.Sign < 0)
                parts++;
        }
        return parts;
    }

    /// <summary>Another segment on the same line: its stretch along this one, whether it runs the same way (1) or against (-1), and its sign.</summary>
    private readonly record struct Overlay(int Index, Fraction Low, Fraction High, int Way, int Sign)
    {
        public bool Covers(Fraction from, Fraction to) => Low.CompareTo(from) <= 0 && High.CompareTo(to) >= 0;
    }

    private readonly record struct Event(Fraction Along, int LeftStep, int RightStep) : IComparable<Event>
    {
        public int CompareTo(Event other) => Along.CompareTo(other.Along);
    }
}
