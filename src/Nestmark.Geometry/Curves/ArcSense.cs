namespace Nestmark.Geometry.Curves;

/// <summary>Which way an arc runs about its center.</summary>
public enum ArcSense
{
    /// <summary>From the y axis toward the x axis.</summary>
    Falling,

    /// <summary>From the x axis toward the y axis.</summary>
    Rising,
}
