namespace Nestmark.Pieces.Drafting;

/// <summary>How a strip is made up.</summary>
public enum StripMake
{
    /// <summary>As it is cut.</summary>
    Single,

    /// <summary>Folded lengthwise in the middle.</summary>
    Double,
}
