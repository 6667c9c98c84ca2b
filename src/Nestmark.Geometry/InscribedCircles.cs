using System.Collections.Immutable;

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

    private sealed class Boundary(Polygon polygon)
    {
        private readonly ImmutableArray<ImmutableArray<Point>> _rings = [polygon.Outer, .. polygon.Holes];

        /// <summary>Distance to the boundary, below zero outside.</summary>
        public double Inside(double x, double y)
        {
            bool isInside = false;
            double least = double.MaxValue;
            foreach (ImmutableArray<Point> ring in _rings)
            {
                for (int i = 0; i < ring.Length; i++)
                {
                    Point start = ring[i];
                    Point end = ring[i + 1 == ring.Length ? 0 : i + 1];
                    least = Math.Min(least, SquareDistance(x - start.X, y - start.Y, end.X - start.X, end.Y - start.Y));
                    if (start.Y > y != end.Y > y && x < start.X + (y - start.Y) * (end.X - start.X) / (end.Y - start.Y))
                        isInside = !isInside;
                }
            }
            return isInside ? Math.Sqrt(least) : -Math.Sqrt(least);
        }

        private static double SquareDistance(double offX, double offY, double alongX, double alongY)
        {
            double part = Math.Clamp((offX * alongX + offY * alongY) / (alongX * alongX + alongY * alongY), 0, 1);
            double awayX = offX - part * alongX;
            double awayY = offY - part * alongY;
            return awayX * awayX + awayY * awayY;
        }
    }
}
