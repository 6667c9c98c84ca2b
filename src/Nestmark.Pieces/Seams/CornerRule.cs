namespace Nestmark.Pieces.Seams;

/// <summary>What is expected of the edges that cross a seam at its ends.</summary>
public enum CornerRule
{
    /// <summary>They run on across the seam without a point, as hems and waists do.</summary>
    RunOn,

    /// <summary>Nothing: a point is meant, or the seam ends in another one.</summary>
    Free,
}
