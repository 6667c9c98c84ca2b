namespace Nestmark.Geometry;

/// <summary>The convex hull of points; exact.</summary>
/// <remarks>Method: A. M. Andrew (1979), Another efficient algorithm for convex hulls in two dimensions.</remarks>
public static class ConvexHull
{
    /// <summary>The smallest convex polygon around the points, without corners on straight runs.</summary>
    /// <exception cref="ArgumentException">All points lie on one line.</exception>
    public static Polygon Of(IEnumerable<Point> points)
    {
        Point[] sorted = [.. points];
        Array.Sort(sorted);
        List<Point> lower = Chain(sorted);
        Array.Reverse(sorted);
        List<Point> upper = Chain(sorted);
        return Polygon.Of([.. lower, .. upper]);
    }

    private static List<Point> Chain(Point[] sorted)
    {
        List<Point> chain = [];
        foreach (Point point in sorted)
        {
            while (chain.Count >= 2 && Orientation.Of(chain[^2], chain[^1], point) <= 0)
                chain.RemoveAt(chain.Count - 1);
            chain.Add(point);
        }
        return chain;
    }
}
