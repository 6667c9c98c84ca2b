using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>The inner-fit polygon of a shape in a container.</summary>
public static class InnerFitPolygon
{
    /// <summary>The displacements at which a shape lies in an upright rectangle: again a rectangle, perhaps as thin as a line or a point; <c>null</c> when it does not fit.</summary>
    public static Box? InRectangle(Box container, Polygon moving)
    {
        Box bounds = moving.Bounds;
        Box places = new(
            container.MinX - bounds.MinX, container.MinY - bounds.MinY,
            container.MaxX - bounds.MaxX, container.MaxY - bounds.MaxY);
        return places.Width < 0 || places.Height < 0 ? null : places;
    }

    /// <summary>The displacements at which a shape lies in a simple container.</summary>
    /// <param name="container">Simple; its holes are not looked at. Micrometers.</param>
    /// <param name="moving">Simple; its holes do not matter.</param>
    /// <exception cref="ArgumentException">A shape reaches beyond <see cref="NoFitPolygon.CoordinateLimit"/>.</exception>
    /// <remarks>The outside of the container is a frame around it, cut open along one line; the inner-fit places are the holes of the frame's no-fit polygon.</remarks>
    public static InnerFitRegion Of(Polygon container, Polygon moving)
    {
        ImmutableArray<Point> frame = Frame(container, moving.Bounds);
        NoFitRegion outside = NoFitPolygon.OfRings(frame, moving.Outer);
        Box places = new(
            container.Bounds.MinX - moving.Bounds.MinX, container.Bounds.MinY - moving.Bounds.MinY,
            container.Bounds.MaxX - moving.Bounds.MaxX, container.Bounds.MaxY - moving.Bounds.MaxY);
        return new InnerFitRegion(
            [.. outside.Rings.Where(ring => IsWithin(places, ring.AsSpan())).Select(ring => ring.Reverse().ToImmutableArray())],
            [.. outside.Slides.Where(slide => IsWithin(places, [slide.Start, slide.End]))],
            [.. outside.Fits.Where(fit => IsWithin(places, [fit]))]);
    }

    private static bool IsWithin(Box places, ReadOnlySpan<Point> points) => places.Contains(Box.Around(points));

    private static ImmutableArray<Point> Frame(Polygon container, Box moving)
    {
        ImmutableArray<Point> ring = container.Outer;
        int rightmost = 0;
        for (int i = 1; i < ring.Length; i++)
        {
            if (ring[i] > ring[rightmost])
                rightmost = i;
        }
        Point start = ring[rightmost];
        long margin = moving.Width + moving.Height + 1000;
        Box box = container.Bounds;
        (long right, long left) = (box.MaxX + margin, box.MinX - margin);
        (long top, long bottom) = (box.MaxY + margin, box.MinY - margin);
        ImmutableArray<Point>.Builder frame = ImmutableArray.CreateBuilder<Point>();
        frame.AddRange(new(right, start.Y), new(right, top), new(left, top), new(left, bottom), new(right, bottom), new(right, start.Y));
        for (int i = 0; i <= ring.Length; i++)
            frame.Add(ring[((rightmost - i) % ring.Length + ring.Length) % ring.Length]);
        return frame.ToImmutable();
    }
}
