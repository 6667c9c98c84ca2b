namespace Nestmark.Nesting;

/// <summary>A direction of the cloth in which a print recurs.</summary>
public enum ClothAxis
{
    /// <summary>Along the cloth: from crosswise bar to crosswise bar.</summary>
    Along,

    /// <summary>Across the cloth: from lengthwise bar to lengthwise bar.</summary>
    Across,
}
