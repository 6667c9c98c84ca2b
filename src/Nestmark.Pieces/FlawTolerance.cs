namespace Nestmark.Pieces;

/// <summary>Where on a piece a flaw of the cloth may lie.</summary>
public enum FlawTolerance
{
    /// <summary>Nowhere.</summary>
    Nowhere,

    /// <summary>Within the seam allowances and hems.</summary>
    Allowances,

    /// <summary>Anywhere: it does not show.</summary>
    Anywhere,
}
