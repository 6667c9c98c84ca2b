using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>An outline in one of the ways it may lie.</summary>
/// <param name="Reach">What the search keeps free of others: the cutting line, grown by half the gap, perhaps simplified outward.</param>
/// <param name="SizeMicrometers">Square root of the area of its hull: how far an overlap with it may have to be carried.</param>
internal sealed record SearchShape(Polygon Reach, double SizeMicrometers)
{
    /// <summary>Mean size of some shapes, 1 or more.</summary>
    public static double MeanSizeMicrometers(IEnumerable<SearchShape> shapes) => shapes.Average(shape => shape.SizeMicrometers);
}
