namespace Nestmark.Yardage.Seams;

/// <summary>What an alteration did to a seam.</summary>
public enum SeamTurnKind
{
    /// <summary>The sides met before it and do not after it.</summary>
    Broken,

    /// <summary>The sides did not meet before it and do after it.</summary>
    Mended,
}
