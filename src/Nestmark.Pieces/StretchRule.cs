namespace Nestmark.Pieces;

/// <summary>Which way a piece of knit must stretch most.</summary>
public enum StretchRule
{
    /// <summary>It does not matter.</summary>
    AnyWay,

    /// <summary>Across its grainline: round the body.</summary>
    AcrossGrain,

    /// <summary>Along its grainline.</summary>
    AlongGrain,
}
