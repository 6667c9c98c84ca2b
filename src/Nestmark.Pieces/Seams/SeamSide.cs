namespace Nestmark.Pieces.Seams;

/// <summary>One of the two sides of a seam.</summary>
public enum SeamSide
{
    /// <summary>The side named first.</summary>
    First,

    /// <summary>The side named second.</summary>
    Second,
}
