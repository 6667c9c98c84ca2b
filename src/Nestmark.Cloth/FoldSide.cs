namespace Nestmark.Cloths;

/// <summary>Where a fold lies.</summary>
public enum FoldSide
{
    /// <summary>Along the cloth, the cloth above it.</summary>
    Near,

    /// <summary>Along the cloth, the cloth below it.</summary>
    Far,

    /// <summary>Across the cloth, at its beginning.</summary>
    Begin,
}
