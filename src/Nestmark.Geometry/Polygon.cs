using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>A region bounded by one outer ring and any number of holes, in whole micrometers.</summary>
/// <remarks>
/// Guaranteed: the outer ring runs counter-clockwise, holes clockwise, first point not repeated, no two neighbors equal, area above zero.
/// Not checked here: that rings do not cross themselves or each other.
/// </remarks>
public sealed class Polygon
{
    private Polygon(ImmutableArray<Point> outer, ImmutableArray<ImmutableArray<Point>> holes)
    {
        Outer = outer;
        Holes = holes;
        Bounds = Box.Around(outer.AsSpan());
    }

    /// <summary>The outer ring, counter-clockwise.</summary>
    public ImmutableArray<Point> Outer { get; }

    /// <summary>The holes, clockwise; often empty.</summary>
    public ImmutableArray<ImmutableArray<Point>> Holes { get; }

    /// <summary>The smallest upright box around it.</summary>
    public Box Bounds { get; }

    /// <summary>Area in square millimeters, holes left out.</summary>
    public double AreaSquareMillimeters => (double)TwiceArea / 2e6;

    /// <summary>Twice the area in square micrometers, holes left out; exact.</summary>
    public Int128 TwiceArea
    {
        get
        {
            Int128 sum = TwiceSignedArea(Outer.AsSpan());
            foreach (ImmutableArray<Point> hole in Holes)
                sum += TwiceSignedArea(hole.AsSpan());
            return sum;
        }
    }

    /// <summary>Length of the outer ring in millimeters.</summary>
    public double PerimeterMillimeters
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < Outer.Length; i++)
            {
                Point step = Outer[(i + 1) % Outer.Length] - Outer[i];
                sum += Math.Sqrt((double)step.X * step.X + (double)step.Y * step.Y);
            }
            return sum / 1000;
        }
    }

    /// <summary>A polygon without holes; repeated neighbors are dropped and the ring is turned counter-clockwise.</summary>
    /// <exception cref="ArgumentException">Fewer than three points, or no area.</exception>
    public static Polygon Of(IEnumerable<Point> ring) => WithHoles(ring, []);

    /// <summary>A polygon with holes; repeated neighbors are dropped and rings are turned the right way round.</summary>
    /// <exception cref="ArgumentException">A ring has fewer than three points or no area.</exception>
    public static Polygon WithHoles(IEnumerable<Point> outer, IEnumerable<IEnumerable<Point>> holes) => new(
        Oriented(outer, Winding.CounterClockwise),
        [.. holes.Select(hole => Oriented(hole, Winding.Clockwise))]);

    /// <summary>An upright rectangle with its lowest left corner at the origin.</summary>
    /// <exception cref="ArgumentException">A side is not above zero.</exception>
    public static Polygon Rectangle(Length alongX, Length alongY)
    {
        if (alongX <= Length.Zero || alongY <= Length.Zero)
            throw new ArgumentException("Both sides of a rectangle must be above zero.");
        long x = alongX.Micrometers;
        long y = alongY.Micrometers;
        return Of([new(0, 0), new(x, 0), new(x, y), new(0, y)]);
    }

    /// <summary>Twice the signed area of a ring: above zero when counter-clockwise.</summary>
    public static Int128 TwiceSignedArea(ReadOnlySpan<Point> ring)
    {
        Int128 sum = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            Point here = ring[i];
            Point next = ring[i + 1 == ring.Length ? 0 : i + 1];
            sum += (Int128)here.X * next.Y - (Int128)next.X * here.Y;
        }
        return sum;
    }

    /// <summary>This polygon, moved.</summary>
    public Polygon Shifted(Point by) => Mapped(point => point + by);

    /// <summary>This polygon with every point mapped; rings are put the right way round again.</summary>
    /// <exception cref="ArgumentException">The map leaves a ring without area.</exception>
    public Polygon Mapped(Func<Point, Point> map) => WithHoles(Outer.Select(map), Holes.Select(hole => hole.Select(map)));

    private static ImmutableArray<Point> Oriented(IEnumerable<Point> ring, Winding winding)
    {
        List<Point> points = [];
        foreach (Point point in ring)
        {
            if (points.Count == 0 || points[^1] != point)
                points.Add(point);
        }
        while (points.Count > 1 && points[^1] == points[0])
            points.RemoveAt(points.Count - 1);
        Int128 area = points.Count < 3 ? 0 : TwiceSignedArea(points.ToArray());
        if (area == 0)
            throw new ArgumentException("A ring needs three points and an area above zero.", nameof(ring));
        if (area > 0 != (winding == Winding.CounterClockwise))
            points.Reverse();
        return [.. points];
    }

    private enum Winding
    {
        CounterClockwise,
        Clockwise,
    }
}
