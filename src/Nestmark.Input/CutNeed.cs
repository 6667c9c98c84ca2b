namespace Nestmark.Input;

/// <summary>Whether a piece has to say how often it is cut.</summary>
internal enum CutNeed
{
    /// <summary>It has to.</summary>
    Required,

    /// <summary>Its shape says so, unless the piece does.</summary>
    FromShape,
}
