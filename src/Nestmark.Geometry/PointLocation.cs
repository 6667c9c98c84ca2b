using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>Where a point lies to rings and segments; exact.</summary>
public static class PointLocation
{
    /// <summary>1 strictly inside, 0 on a ring, -1 outside, by the even-odd rule over all rings.</summary>
    public static int InRings(ImmutableArray<ImmutableArray<Point>> rings, Point point)
    {
        bool inside = false;
        foreach (ImmutableArray<Point> ring in rings)
        {
            int location = InRing(ring.AsSpan(), point);
            if (location == 0)
                return 0;
            inside ^= location > 0;
        }
        return inside ? 1 : -1;
    }

    /// <summary>1 strictly inside, 0 on the boundary, -1 outside; holes are outside.</summary>
    public static int InPolygon(Polygon polygon, Point point)
    {
        int outer = InRing(polygon.Outer.AsSpan(), point);
        if (outer <= 0)
            return outer;
        foreach (ImmutableArray<Point> hole in polygon.Holes)
        {
            int inHole = InRing(hole.AsSpan(), point);
            if (inHole >= 0)
                return -inHole;
        }
        return 1;
    }

    /// <summary>1 strictly inside the ring, 0 on it, -1 outside; either way round.</summary>
    public static int InRing(ReadOnlySpan<Point> ring, Point point)
    {
        bool inside = false;
        Point previous = ring[^1];
        foreach (Point here in ring)
        {
            if (here == point)
                return 0;
            bool straddles = here.Y > point.Y != previous.Y > point.Y;
            if (straddles)
            {
                int side = Orientation.Of(previous, here, point);
                if (side == 0)
                    return 0;
                if (side > 0 == here.Y > previous.Y)
                    inside = !inside;
            }
            else if (here.Y == point.Y && previous.Y == point.Y && here.X > point.X != previous.X > point.X)
            {
                return 0;
            }
            previous = here;
        }
        return inside ? 1 : -1;
    }

    /// <summary>The place of a segment that is nearest to a point, rounded to whole micrometers.</summary>
    public static Point NearestOnSegment(Point start, Point end, Point point)
    {
        Point run = end - start;
        double square = Orientation.Dot(run, run);
        double ratio = square == 0 ? 0 : Math.Clamp(Orientation.Dot(run, point - start) / square, 0, 1);
        return start + new Point((long)Math.Round(run.X * ratio), (long)Math.Round(run.Y * ratio));
    }

    /// <summary>Whether a point lies on a segment, ends included.</summary>
    public static bool IsOnSegment(Point start, Point end, Point point) =>
        Orientation.Of(start, end, point) == 0
        && Math.Min(start.X, end.X) <= point.X && point.X <= Math.Max(start.X, end.X)
        && Math.Min(start.Y, end.Y) <= point.Y && point.Y <= Math.Max(start.Y, end.Y);
}
