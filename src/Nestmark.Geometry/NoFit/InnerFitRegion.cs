using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>The places of a moving shape at which it lies inside a container, touching allowed.</summary>
/// <param name="Rings">Closed areas of places, counter-clockwise; holes of such areas clockwise.</param>
/// <param name="Slides">Lines of places where the shape fits exactly between two sides.</param>
/// <param name="Fits">Single places where it fits exactly.</param>
public sealed record InnerFitRegion(
    ImmutableArray<ImmutableArray<Point>> Rings,
    ImmutableArray<(Point Start, Point End)> Slides,
    ImmutableArray<Point> Fits)
{
    /// <summary>Whether the shape fits nowhere.</summary>
    public bool IsEmpty => Rings.IsEmpty && Slides.IsEmpty && Fits.IsEmpty;

    /// <summary>Whether the shape lies inside at a place.</summary>
    public bool Contains(Point place) =>
        Fits.Contains(place)
        || Slides.Any(slide => PointLocation.IsOnSegment(slide.Start, slide.End, place))
        || PointLocation.InRings(Rings, place) >= 0;
}
