namespace Nestmark.Geometry;

/// <summary>Placeholder until the pieces branch lands.</summary>
public static class Offset
{
    /// <summary>Placeholder.</summary>
    public static Polygon Grow(Polygon polygon, Length by) => throw new NotImplementedException(polygon.ToString() + by);
}
