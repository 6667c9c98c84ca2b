using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>Whether a ring is simple: no two edges meet but neighbors in their common vertex. Exact in whole micrometers.</summary>
/// <remarks>
/// Method: a tree of boxes over runs of consecutive edges, compared with itself. Usual cost O(n log n); a ring whose long slanted
/// edges lie in each other's boxes costs up to O(n²) box tests.
/// </remarks>
public static class PolygonValidity
{
    /// <summary>The places where a ring meets itself; none when it is simple.</summary>
    /// <param name="ring">Within ±1 km, either way round, first point not repeated. Edges without length are passed over.</param>
    /// <param name="atMost">Ends the search after so many places, 1 or more.</param>
    /// <returns>In order of edges. Three points or fewer that have no area give one repeated run or more.</returns>
    public static ImmutableArray<RingFlaw> FlawsOf(ImmutableArray<Point> ring, int atMost)
    {
        if (atMost < 1)
            throw new ArgumentException("At least one place must be asked for.", nameof(atMost));
        if (ring.Length < 2)
            return [];
        Search search = new(ring, atMost);
        search.Compare(1, 1);
        search.Found.Sort((left, right) => (left.FirstEdge, left.SecondEdge).CompareTo((right.FirstEdge, right.SecondEdge)));
        return [.. search.Found];
    }

    private static RingFlaw? FlawBetween(ImmutableArray<Point> ring, int first, int second)
    {
        (Point a, Point b) = (ring[first], ring[(first + 1) % ring.Length]);
        (Point c, Point d) = (ring[second], ring[(second + 1) % ring.Length]);
        if (a == b || c == d)
            return null;
        int sideA = Orientation.Of(c, d, a);
        int sideB = Orientation.Of(c, d, b);
        if (sideA == 0 && sideB == 0)
            return AlongEachOther(first, second, (a, b), (c, d));
        int sideC = Orientation.Of(a, b, c);
        int sideD = Orientation.Of(a, b, d);
        if (sideA * sideB > 0 || sideC * sideD > 0)
            return null;
        if (sideA * sideB < 0 && sideC * sideD < 0)
            return new RingFlaw(RingFlawKind.Crossing, MeetingPoint(a, b, c, d), first, second);
        bool areNeighbors = second == first + 1 || (first == 0 && second == ring.Length - 1);
        Point touch = sideA == 0 ? a : sideB == 0 ? b : sideC == 0 ? c : d;
        return areNeighbors ? null : new RingFlaw(RingFlawKind.Touching, touch, first, second);
    }

    private static RingFlaw? AlongEachOther(int first, int second, (Point A, Point B) one, (Point C, Point D) other)
    {
        Point low = Larger(Smaller(one.A, one.B), Smaller(other.C, other.D));
        Point high = Smaller(Larger(one.A, one.B), Larger(other.C, other.D));
        if (low < high)
            return new RingFlaw(RingFlawKind.Repeated, low, first, second);
        bool sharesVertex = one.B == other.C || other.D == one.A;
        return low == high && !sharesVertex ? new RingFlaw(RingFlawKind.Touching, low, first, second) : null;
    }

    private static Point Smaller(Point left, Point right) => left < right ? left : right;

    private static Point Larger(Point left, Point right) => left < right ? right : left;

    private static Point MeetingPoint(Point a, Point b, Point c, Point d)
    {
        Int128 along = Orientation.Cross(c - a, d - c);
        Int128 whole = Orientation.Cross(b - a, d - c);
        return a + new Point(Rounded((b.X - a.X) * along, whole), Rounded((b.Y - a.Y) * along, whole));
    }

    private static long Rounded(Int128 dividend, Int128 divisor)
    {
        if (divisor < 0)
            (dividend, divisor) = (-dividend, -divisor);
        Int128 half = dividend < 0 ? -(divisor / 2) : divisor / 2;
        return (long)((dividend + half) / divisor);
    }

    private sealed class Search
    {
        private readonly ImmutableArray<Point> _ring;
        private readonly int _atMost;
        private readonly int _leaves;
        private readonly Box[] _boxes;

        public Search(ImmutableArray<Point> ring, int atMost)
        {
            _ring = ring;
            _atMost = atMost;
            _leaves = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)ring.Length);
            _boxes = new Box[2 * _leaves];
            // Leaves past the last edge hold a box that touches nothing and adds nothing to the boxes above.
            Array.Fill(_boxes, new Box(long.MaxValue, long.MaxValue, long.MinValue, long.MinValue));
            for (int i = 0; i < ring.Length; i++)
                _boxes[_leaves + i] = Box.Around([ring[i], ring[(i + 1) % ring.Length]]);
            for (int i = _leaves - 1; i > 0; i--)
                _boxes[i] = _boxes[2 * i].Including(_boxes[2 * i + 1]);
        }

        public List<RingFlaw> Found { get; } = [];

        public void Compare(int left, int right)
        {
            if (Found.Count >= _atMost || !_boxes[left].Touches(_boxes[right]))
                return;
            if (left >= _leaves)
            {
                CompareEdges(left - _leaves, right - _leaves);
                return;
            }
            Compare(2 * left, 2 * right);
            Compare(2 * left, 2 * right + 1);
            if (left != right)
                Compare(2 * left + 1, 2 * right);
            Compare(2 * left + 1, 2 * right + 1);
        }

        private void CompareEdges(int first, int second)
        {
            if (first < second && FlawBetween(_ring, first, second) is RingFlaw flaw)
                Found.Add(flaw);
        }
    }
}
