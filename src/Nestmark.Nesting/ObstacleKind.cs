namespace Nestmark.Nesting;

/// <summary>What keeps pieces off a place.</summary>
public enum ObstacleKind
{
    /// <summary>There is no cloth: beyond the edge of a remnant, or a hole in it.</summary>
    NoCloth,

    /// <summary>The cloth is spoiled there; pieces that bear flaws may lie on it.</summary>
    Flaw,
}
