namespace Nestmark.Pieces;

/// <summary>How the seam allowance of an edge ends at its two corners.</summary>
public enum AllowanceEnds
{
    /// <summary>Both cut edges run on until they meet, within the point limit.</summary>
    Mitred,

    /// <summary>Ends square to this edge's seam line, through the point where the cut edge of the crossing seam meets it.</summary>
    Squared,

    /// <summary>Ends as the mirror image, about this edge, of the piece beside it: for hems and facings that turn up along slanted seams.</summary>
    Reflected,
}
