namespace Nestmark.Pieces;

/// <summary>How the grainline of a piece lies to the selvage.</summary>
public enum GrainRule
{
    /// <summary>Along the selvage.</summary>
    Along,

    /// <summary>Across the cloth.</summary>
    Across,

    /// <summary>At 45 degrees.</summary>
    Bias,

    /// <summary>Any quarter turn, for pieces where the grain does not matter.</summary>
    Any,
}
