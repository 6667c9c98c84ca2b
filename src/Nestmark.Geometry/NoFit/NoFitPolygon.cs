using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>The no-fit polygon of two shapes.</summary>
public static class NoFitPolygon
{
    /// <summary>Largest distance of a vertex from the origin: 250 m. Keeps every product within 64 bits.</summary>
    public const long CoordinateLimit = 250_000_000;

    /// <summary>Every displacement of <paramref name="moving"/> at which it overlaps <paramref name="still"/>; on its boundary they touch.</summary>
    /// <param name="still">Simple, holes allowed, within <see cref="CoordinateLimit"/>. Micrometers.</param>
    /// <param name="moving">As <paramref name="still"/>; its reference point is its origin.</param>
    /// <exception cref="ArgumentException">A shape reaches beyond <see cref="CoordinateLimit"/>.</exception>
    /// <remarks>
    /// Method: winding numbers of the convolution (see <see cref="Convolution"/>). J. Bennell, J. Oliveira (2008), The geometry of nesting problems, section 4, defines the terms.
    /// Exact but for corners between whole micrometers, which are rounded to the nearest. Exact fits and exact slides are kept.
    /// Cost: O(n + m) for convex shapes (see <see cref="ConvexSum"/>), else O(k²), k the number of convolution segments: at most n·m.
    /// </remarks>
    public static NoFitRegion Of(Polygon still, Polygon moving)
    {
        NoFitRegion region = WithoutFits(still, moving);
        NoFitRegion outlines = still.Holes.IsEmpty && moving.Holes.IsEmpty ? region : BoundaryOf(still.Outer, moving.Outer);
        return region with { Fits = [.. ExactFits.Of(still.Outer, moving.Outer, outlines), .. region.Fits] };
    }

    /// <summary>As <see cref="Of"/>, but single places of exact fit between the two outlines are not searched for: quicker, for searches that keep shapes a few micrometers apart.</summary>
    /// <param name="still">As for <see cref="Of"/>.</param>
    /// <param name="moving">As for <see cref="Of"/>.</param>
    /// <exception cref="ArgumentException">A shape reaches beyond <see cref="CoordinateLimit"/>.</exception>
    public static NoFitRegion WithoutFits(Polygon still, Polygon moving)
    {
        Guard(still);
        Guard(moving);
        NoFitRegion region = BoundaryOf(still.Outer, moving.Outer);
        foreach (ImmutableArray<Point> hole in still.Holes)
            region = WithFree(region, InnerFitPolygon.Of(Polygon.Of(hole), moving));
        foreach (ImmutableArray<Point> hole in moving.Holes)
            region = WithFree(region, Negated(InnerFitPolygon.Of(Polygon.Of(hole), still)));
        return region;
    }

    /// <summary>As <see cref="Of"/> for two counter-clockwise rings, which may touch themselves but not cross.</summary>
    internal static NoFitRegion OfRings(ImmutableArray<Point> still, ImmutableArray<Point> moving)
    {
        NoFitRegion region = BoundaryOf(still, moving);
        return region with { Fits = ExactFits.Of(still, moving, region) };
    }

    private static NoFitRegion BoundaryOf(ImmutableArray<Point> still, ImmutableArray<Point> moving)
    {
        ImmutableArray<Point> negated = [.. moving.Select(point => -point)];
        if (ConvexSum.Of(still.AsSpan(), negated.AsSpan()) is { } sum)
            return new NoFitRegion([sum], [], []);
        List<ConvolutionSegment> segments = Convolution.Of(still.AsSpan(), negated.AsSpan());
        (List<BoundaryEdge> boundary, List<BoundaryEdge> slides) = WindingSweep.Of(segments);
        return new NoFitRegion(RingTracing.Of(boundary), Sorted(slides), []);
    }

    private static ImmutableArray<(Point Start, Point End)> Sorted(List<BoundaryEdge> slides)
    {
        BoundaryEdge[] sorted = [.. slides.Distinct()];
        Array.Sort(sorted);
        return [.. sorted.Select(edge => (edge.Start, edge.End))];
    }

    private static NoFitRegion WithFree(NoFitRegion region, InnerFitRegion free) => new(
        region.Rings.AddRange(free.Rings.Select(ring => ring.Reverse().ToImmutableArray())),
        region.Slides.AddRange(free.Slides),
        region.Fits.AddRange(free.Fits));

    private static InnerFitRegion Negated(InnerFitRegion region) => new(
        [.. region.Rings.Select(ring => ring.Select(point => -point).ToImmutableArray())],
        [.. region.Slides.Select(slide => (-slide.End, -slide.Start))],
        [.. region.Fits.Select(point => -point)]);

    private static void Guard(Polygon polygon)
    {
        Box box = polygon.Bounds;
        if (Math.Min(box.MinX, box.MinY) < -CoordinateLimit || Math.Max(box.MaxX, box.MaxY) > CoordinateLimit)
            throw new ArgumentException("A shape must lie within ±250 m of its origin.");
    }
}
