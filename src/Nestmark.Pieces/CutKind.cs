namespace Nestmark.Pieces;

/// <summary>What the count of a cut instruction counts.</summary>
public enum CutKind
{
    /// <summary>Copies as drawn.</summary>
    Copies,

    /// <summary>Pairs: one copy as drawn and its mirror image each.</summary>
    Pairs,

    /// <summary>Half pieces on a fold; each opens to one whole symmetric piece.</summary>
    OnFold,
}
