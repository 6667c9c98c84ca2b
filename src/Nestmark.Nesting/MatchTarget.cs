namespace Nestmark.Nesting;

/// <summary>What a point of a piece is tied to.</summary>
public enum MatchTarget
{
    /// <summary>A point of another piece: both lie at the same place of the repeat.</summary>
    Point,

    /// <summary>The middle of a bar.</summary>
    Bar,

    /// <summary>The middle between two bars.</summary>
    BetweenBars,

    /// <summary>The line where the border begins.</summary>
    Border,
}
