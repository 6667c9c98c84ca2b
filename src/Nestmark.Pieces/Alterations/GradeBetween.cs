namespace Nestmark.Pieces.Alterations;

/// <summary>What a grade table gives sizes for which it has no offsets.</summary>
public enum GradeBetween
{
    /// <summary>Nothing: every size needs its own.</summary>
    Given,

    /// <summary>Even steps between the nearest sizes on both sides.</summary>
    Even,
}
