namespace Nestmark.Pieces;

/// <summary>How much a fault matters.</summary>
public enum FaultWeight
{
    /// <summary>The piece was mended or needs a word, and can be used.</summary>
    Note,

    /// <summary>The piece cannot be used.</summary>
    Error,
}
