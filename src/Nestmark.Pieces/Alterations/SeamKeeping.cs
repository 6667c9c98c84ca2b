namespace Nestmark.Pieces.Alterations;

/// <summary>What stays when a seam is raised or lowered.</summary>
public enum SeamKeeping
{
    /// <summary>The edges beside it keep their line: the seam ends where they reach, and becomes as wide as they are apart there.</summary>
    Sides,

    /// <summary>The seam keeps its line and length, as narrow as it was; the edges beside it are drawn to its ends.</summary>
    Length,
}
