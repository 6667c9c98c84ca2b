namespace Nestmark.Cloths;

/// <summary>Which way a knit stretches most.</summary>
public enum ClothStretch
{
    /// <summary>Both ways alike, or not at all.</summary>
    Alike,

    /// <summary>Across the cloth, as most knits do.</summary>
    Across,

    /// <summary>Along the cloth.</summary>
    Along,
}
