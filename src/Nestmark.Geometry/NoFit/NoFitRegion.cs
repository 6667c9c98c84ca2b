using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>The places of a moving shape at which it overlaps a still one: an open region, plus places inside it where the two only touch.</summary>
/// <param name="Rings">Outer rings counter-clockwise, holes clockwise; the starting vertex is unspecified. Corners that fall between whole micrometers are rounded to the nearest.</param>
/// <param name="Slides">Lines inside the rings along which the moving shape slides with an exact fit.</param>
/// <param name="Fits">Single places inside the rings where the moving shape fits exactly.</param>
public sealed record NoFitRegion(
    ImmutableArray<ImmutableArray<Point>> Rings,
    ImmutableArray<(Point Start, Point End)> Slides,
    ImmutableArray<Point> Fits)
{
    /// <summary>Where a place lies to the region: 1 overlapping, 0 touching, -1 apart.</summary>
    /// <remarks>Exact up to the rounding of the rings.</remarks>
    public int Locate(Point place)
    {
        if (Fits.Contains(place) || Slides.Any(slide => PointLocation.IsOnSegment(slide.Start, slide.End, place)))
            return 0;
        return PointLocation.InRings(Rings, place);
    }
}
