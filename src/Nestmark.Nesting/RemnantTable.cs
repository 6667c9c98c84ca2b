using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Nesting;

/// <summary>Leftovers spread side by side on one table, so that one search looks for places on all of them.</summary>
/// <param name="Surface">The lay.</param>
/// <param name="Length">From the first leftover to the end of the last.</param>
/// <param name="Places">Each leftover with where its lowest left corner lies.</param>
/// <param name="Obstacles">All that is no cloth.</param>
public sealed record RemnantTable(
    LaySurface Surface, Length Length, ImmutableArray<(Remnant Remnant, Point At)> Places, ImmutableArray<Obstacle> Obstacles)
{
    private const long Between = 100_000;

    /// <summary>Spreads some leftovers, in their order.</summary>
    /// <param name="remnants">One or more.</param>
    /// <exception cref="ArgumentException">None is given.</exception>
    public static RemnantTable Of(ImmutableArray<Remnant> remnants)
    {
        if (remnants.IsEmpty)
            throw new ArgumentException("A table needs at least one leftover.", nameof(remnants));
        List<(Remnant, Point)> places = [];
        long x = 0;
        foreach (Remnant remnant in remnants)
        {
            places.Add((remnant, new Point(x, 0)));
            x += remnant.Area.Bounds.Width + Between;
        }
        long end = x - Between;
        long depth = remnants.Max(remnant => remnant.Area.Bounds.Height);
        return new RemnantTable(LaySurface.Remnants(Length.FromMicrometers(depth)), Length.FromMicrometers(end), [.. places], [.. NoCloth(places, end, depth)]);
    }

    /// <summary>Whether a leftover, its holes not counted, has room for a shape as it is turned, even exactly.</summary>
    public static bool HasRoomFor(Remnant remnant, Polygon turned) => !InnerFitPolygon.Of(Polygon.Of(remnant.Area.Outer), turned).IsEmpty;

    /// <summary>The same leftovers, each larger along one direction.</summary>
    /// <param name="by">By how much, above zero and no wider than the narrowest place of a leftover.</param>
    /// <param name="unit">Along which axis: (1, 0) or (0, 1).</param>
    public RemnantTable Larger(Length by, Point unit) => Of([.. Places.Select(place => place.Remnant with { Area = Larger(place.Remnant.Area, by, unit) })]);

    private static Polygon Larger(Polygon area, Length by, Point unit) =>
        Clipping.Union([area, area.Shifted(new Point(unit.X * by.Micrometers, unit.Y * by.Micrometers))])[0];

    /// <summary>The leftover that a placement lies on.</summary>
    public Remnant Under(Placement placement) => PlaceUnder(placement).Remnant;

    /// <summary>The leftover that a placement lies on, and where its lowest left corner is.</summary>
    public (Remnant Remnant, Point At) PlaceUnder(Placement placement)
    {
        long x = placement.CuttingLine.Bounds.MinX;
        return Places.Last(place => place.At.X <= x);
    }

    private static IEnumerable<Obstacle> NoCloth(List<(Remnant Remnant, Point At)> places, long end, long depth)
    {
        Point[] frame = [new(-Between, -Between), new(end + Between, -Between), new(end + Between, depth + Between), new(-Between, depth + Between)];
        yield return new Obstacle(
            Polygon.WithHoles(frame, places.Select(place => place.Remnant.Area.Outer.Select(point => point + place.At))), ObstacleKind.NoCloth);
        foreach ((Remnant remnant, Point at) in places)
        {
            foreach (ImmutableArray<Point> hole in remnant.Area.Holes)
                yield return new Obstacle(Polygon.Of(hole.Select(point => point + at)), ObstacleKind.NoCloth);
        }
    }
}
