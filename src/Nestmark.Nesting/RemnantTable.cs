using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

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

    /// <summary>The leftover that a placement lies on.</summary>
    public Remnant Under(Placement placement)
    {
        long x = placement.CuttingLine.Bounds.MinX;
        return Places.Last(place => place.At.X <= x).Remnant;
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
