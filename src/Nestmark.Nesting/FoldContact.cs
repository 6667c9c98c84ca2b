namespace Nestmark.Nesting;

/// <summary>Whether a placement lies on the fold.</summary>
public enum FoldContact
{
    /// <summary>Anywhere on the lay.</summary>
    Free,

    /// <summary>Its fold edge lies exactly on the fold.</summary>
    OnFold,
}
