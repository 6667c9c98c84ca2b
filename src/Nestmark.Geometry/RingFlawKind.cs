namespace Nestmark.Geometry;

/// <summary>How a ring meets itself.</summary>
public enum RingFlawKind
{
    /// <summary>Two edges cross inside both.</summary>
    Crossing,

    /// <summary>A vertex lies on another edge or vertex.</summary>
    Touching,

    /// <summary>Two edges run along each other for a stretch.</summary>
    Repeated,
}
