namespace Nestmark.Geometry;

/// <summary>Which side of a shape lies up.</summary>
public enum Facing
{
    /// <summary>As drawn.</summary>
    Plain,

    /// <summary>Turned over along the x axis: y becomes -y.</summary>
    Flipped,
}
