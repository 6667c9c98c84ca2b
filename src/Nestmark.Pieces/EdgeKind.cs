namespace Nestmark.Pieces;

/// <summary>What an edge of a piece is.</summary>
public enum EdgeKind
{
    /// <summary>An edge that is cut.</summary>
    Cut,

    /// <summary>The edge that lies on a fold and is not cut.</summary>
    Fold,
}
