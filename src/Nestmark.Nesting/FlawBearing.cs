namespace Nestmark.Nesting;

/// <summary>Whether a piece may lie on a flaw of the cloth.</summary>
public enum FlawBearing
{
    /// <summary>It keeps off.</summary>
    KeepsOff,

    /// <summary>It may lie there.</summary>
    Bears,
}
