namespace Nestmark.Nesting.Search;

/// <summary>What an item of the search is.</summary>
internal enum ItemKind
{
    /// <summary>A piece that keeps off flaws.</summary>
    Piece,

    /// <summary>A piece that may lie on flaws.</summary>
    BearingPiece,

    /// <summary>A place without cloth.</summary>
    NoCloth,

    /// <summary>A flaw.</summary>
    Flaw,
}
