namespace Nestmark.Pieces.Drafting;

/// <summary>How a strip lies to the grain.</summary>
public enum StripRun
{
    /// <summary>Its length along the grain.</summary>
    Along,

    /// <summary>Its length across the cloth, from selvage to selvage at most.</summary>
    Across,
}
