namespace Nestmark.Pieces.Alterations;

/// <summary>How a slash opens or closes.</summary>
public enum SlashOpening
{
    /// <summary>About its end, which keeps the seam there as long as it is.</summary>
    Pivot,

    /// <summary>By the same amount at both ends.</summary>
    Parallel,
}
