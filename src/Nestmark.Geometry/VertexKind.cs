namespace Nestmark.Geometry;

/// <summary>What an outline vertex was in the drawing.</summary>
public enum VertexKind
{
    /// <summary>Where two drawn segments meet; a corner if the outline turns sharply there.</summary>
    Joint,

    /// <summary>Inside a flattened curve; never a corner.</summary>
    Curve,

    /// <summary>Marked by the author as a corner, however slight the turn.</summary>
    Marked,
}
