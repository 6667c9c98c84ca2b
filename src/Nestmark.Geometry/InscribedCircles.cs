using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Nestmark.Geometry;

/// <summary>Circles inside a polygon, the largest first, each as large as those before it leave room for.</summary>
/// <remarks>
/// Each center is a pole of inaccessibility of what is left: squares are halved, the most promising first, until none can hold a circle that is a good deal larger.
/// The idea of covering a shape by such circles is that of J. Gardeyn, G. Vanden Berghe, T. Wauters (2025), arXiv:2509.13329, section 6.
/// Cost: a few hundred distances to the boundary a circle.
/// </remarks>
public static class InscribedCircles
{
    /// <summary>How much larger than the best one found a circle may turn out to be.</summary>
    private const double Precision = 0.02;

    /// <summary>Circles until there are enough, they cover nine tenths of the area, or what is left is too narrow.</summary>
    /// <param name="polygon">Any polygon; holes are kept free.</param>
    /// <param name="most">Most circles, 1 or more.</param>
    /// <param name="leastRatio">Least radius, as a part of that of the first circle.</param>
    /// <returns>One circle or more, apart from each other and inside to within a few micrometers; in a polygon narrower than that the one has radius 0.</returns>
    public static ImmutableArray<Circle> Of(Polygon polygon, int most, double leastRatio)
    {
        Boundary boundary = new(polygon);
        double area = (double)polygon.TwiceArea / 2;
        double covered = 0;
        List<Circle> circles = [];
        while (circles.Count < most && covered < 0.9 * area)
        {
            Circle next = Largest(polygon.Bounds, boundary, circles);
            if (circles.Count > 0 && next.Radius.Micrometers < Math.Max(1, leastRatio * circles[0].Radius.Micrometers))
                break;
            circles.Add(next);
            covered += Math.PI * next.Radius.Micrometers * next.Radius.Micrometers;
        }
        return [.. circles];
    }

    private static Circle Largest(Box bounds, Boundary boundary, List<Circle> taken)
    {
        double half = Math.Max(bounds.Width, bounds.Height) / 2.0;
        PriorityQueue<Square, double> squares = new();
        (double middleX, double middleY) = (bounds.MinX + bounds.Width / 2.0, bounds.MinY + bounds.Height / 2.0);
        Square best = new(middleX, middleY, half, Math.Min(RoomBeside(taken, middleX, middleY), boundary.Inside(middleX, middleY)));
        squares.Enqueue(best, -best.MostRoom);
        while (squares.TryDequeue(out Square square, out _) && square.MostRoom > Wanted(best, half))
        {
            double part = square.Half / 2;
            for (int quarter = 0; quarter < 4; quarter++)
            {
                double x = square.X + (quarter % 2 == 0 ? -part : part);
                double y = square.Y + (quarter < 2 ? -part : part);
                double left = RoomBeside(taken, x, y);
                if (new Square(x, y, part, left).MostRoom <= Wanted(best, half))
                    continue;
                Square smaller = new(x, y, part, Math.Min(left, boundary.Inside(x, y)));
                if (smaller.Room > best.Room)
                    best = smaller;
                squares.Enqueue(smaller, -smaller.MostRoom);
            }
        }
        return new Circle(new Point((long)Math.Round(best.X), (long)Math.Round(best.Y)), Length.FromMicrometers(Math.Max(0, (long)best.Room)));
    }

    /// <summary>What a square must promise to be looked into.</summary>
    private static double Wanted(Square best, double half) => best.Room + Precision * Math.Max(best.Room, half / 50);

    /// <summary>Radius of the circle around a place that keeps off the circles taken, below 0 inside one: cheap to know, and in most places too little.</summary>
    private static double RoomBeside(List<Circle> taken, double x, double y)
    {
        double room = double.MaxValue;
        foreach (Circle circle in taken)
        {
            double awayX = x - circle.Center.X;
            double awayY = y - circle.Center.Y;
            room = Math.Min(room, Math.Sqrt(awayX * awayX + awayY * awayY) - circle.Radius.Micrometers);
        }
        return room;
    }

    /// <summary>A square of the search, with the radius of the circle that fits around its middle.</summary>
    private readonly record struct Square(double X, double Y, double Half, double Room)
    {
        /// <summary>No circle with its center in the square is larger.</summary>
        public double MostRoom => Room + Half * Math.Sqrt(2);
    }

    /// <summary>The edges of a polygon, four at a time; the last four are filled up with edges from a corner to itself, which change nothing.</summary>
    private sealed class Boundary
    {
        private readonly double[] _startX;
        private readonly double[] _startY;
        private readonly double[] _alongX;
        private readonly double[] _alongY;
        private readonly double[] _perSquare;
        private readonly double[] _slope;

        public Boundary(Polygon polygon)
        {
            ImmutableArray<ImmutableArray<Point>> rings = [polygon.Outer, .. polygon.Holes];
            int room = (rings.Sum(ring => ring.Length) + 3) & ~3;
            (_startX, _startY, _alongX) = (new double[room], new double[room], new double[room]);
            (_alongY, _perSquare, _slope) = (new double[room], new double[room], new double[room]);
            int edge = 0;
            foreach (ImmutableArray<Point> ring in rings)
            {
                for (int i = 0; i < ring.Length; i++)
                    Set(edge++, ring[i], ring[i + 1 == ring.Length ? 0 : i + 1]);
            }
            for (; edge < room; edge++)
                Set(edge, polygon.Outer[0], polygon.Outer[0]);
        }

        /// <summary>Distance to the boundary, below zero outside.</summary>
        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        public double Inside(double x, double y)
        {
            Vector256<double> atX = Vector256.Create(x);
            Vector256<double> atY = Vector256.Create(y);
            Vector256<double> least = Vector256.Create(double.MaxValue);
            Vector256<double> parity = Vector256<double>.Zero;
            for (int i = 0; i < _startX.Length; i += 4)
            {
                Vector256<double> alongX = Vector256.LoadUnsafe(ref _alongX[i]);
                Vector256<double> alongY = Vector256.LoadUnsafe(ref _alongY[i]);
                Vector256<double> offX = atX - Vector256.LoadUnsafe(ref _startX[i]);
                Vector256<double> offY = atY - Vector256.LoadUnsafe(ref _startY[i]);
                Vector256<double> part = Vector256.Clamp((offX * alongX + offY * alongY) * Vector256.LoadUnsafe(ref _perSquare[i]), Vector256<double>.Zero, Vector256<double>.One);
                Vector256<double> awayX = offX - part * alongX;
                Vector256<double> awayY = offY - part * alongY;
                least = Vector256.Min(least, awayX * awayX + awayY * awayY);
                Vector256<double> straddles = Vector256.LessThan(offY, Vector256<double>.Zero) ^ Vector256.LessThan(offY, alongY);
                parity ^= straddles & Vector256.LessThan(offX, offY * Vector256.LoadUnsafe(ref _slope[i]));
            }
            double distance = Math.Sqrt(Math.Min(Math.Min(least[0], least[1]), Math.Min(least[2], least[3])));
            return (BitOperations.PopCount(parity.ExtractMostSignificantBits()) & 1) != 0 ? distance : -distance;
        }

        private void Set(int edge, Point start, Point end)
        {
            (_startX[edge], _startY[edge]) = (start.X, start.Y);
            (double alongX, double alongY) = (end.X - start.X, end.Y - start.Y);
            (_alongX[edge], _alongY[edge]) = (alongX, alongY);
            double square = alongX * alongX + alongY * alongY;
            _perSquare[edge] = square > 0 ? 1 / square : 0;
            _slope[edge] = alongY != 0 ? alongX / alongY : 0;
        }
    }
}
