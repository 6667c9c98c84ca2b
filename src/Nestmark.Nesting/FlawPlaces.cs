using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>Where the flaws of a cloth come to lie on a lay, in each of its layers.</summary>
public static class FlawPlaces
{
    /// <summary>Whether a form lies on the cloth at known places, so that flaws can be avoided on it: every form but those whose fold or second section depends on the length of the lay.</summary>
    public static bool CanBeAvoidedOn(LayForm form) =>
        form is LayForm.Open or LayForm.Folded or LayForm.PartialFold or LayForm.DoubleFold or LayForm.Tubular;

    /// <summary>The obstacles that the flaws make, in micrometers of the lay, whose x = 0 lies one end allowance from the cut end.</summary>
    /// <param name="cloth">The cloth; flaws outside its usable width cost nothing.</param>
    /// <param name="surface">A lay on which flaws can be avoided.</param>
    /// <exception cref="ArgumentException">Flaws cannot be avoided on this form.</exception>
    public static ImmutableArray<Obstacle> On(Cloth cloth, LaySurface surface)
    {
        if (cloth.Flaws.IsEmpty)
            return [];
        if (!CanBeAvoidedOn(surface.Form))
            throw new ArgumentException("Flaws cannot be avoided where the lay is folded at an unknown place.", nameof(surface));
        return [.. cloth.Flaws.SelectMany(flaw => surface.Layers.SelectMany(layer => Mapped(flaw.Area, cloth, layer)))];
    }

    private static IEnumerable<Obstacle> Mapped(Polygon flaw, Cloth cloth, LayLayer layer)
    {
        Box room = flaw.Bounds;
        long selvage = cloth.Selvage.Micrometers;
        long low = Math.Max(room.MinY, layer.From.Micrometers + selvage);
        long high = Math.Min(room.MaxY, layer.To.Micrometers + selvage);
        if (high <= low)
            return [];
        Polygon strip = Polygon.Of([new(room.MinX, low), new(room.MaxX, low), new(room.MaxX, high), new(room.MinX, high)]);
        return Clipping.Intersection(flaw, strip).Select(part => new Obstacle(part.Mapped(OnLay), ObstacleKind.Flaw)).Where(obstacle => obstacle.Area.Bounds.MaxX > 0);

        Point OnLay(Point point) => new(
            point.X - cloth.Ends.Micrometers, layer.OnLay(Length.FromMicrometers(point.Y) - cloth.Selvage).Micrometers);
    }
}
