namespace Nestmark.Cloths;

/// <summary>How the cloth is spread for cutting.</summary>
/// <remarks>Forms and what they can cut: references/trade.md 4.1.</remarks>
public enum LayForm
{
    /// <summary>One layer, full usable width.</summary>
    Open,

    /// <summary>Folded lengthwise, right sides together, selvages together: two layers, half the usable width, fold along y = 0.</summary>
    Folded,

    /// <summary>Folded over lengthwise by less than half: two layers beside the fold, one layer beyond the folded-over selvage.</summary>
    PartialFold,

    /// <summary>Both selvages folded in to meet in the middle: two folds, a quarter of the usable width from each to the meeting line.</summary>
    DoubleFold,

    /// <summary>Folded across, cut ends together: two layers, full usable width, fold along x = 0. The nap of the upper layer runs the other way.</summary>
    CrosswiseFold,

    /// <summary>Cut along the crosswise fold and the upper layer turned end for end, right sides still together: two layers, nap alike, no fold.</summary>
    CrosswiseTurned,

    /// <summary>A knit tube as it lies: two layers between two folds.</summary>
    Tubular,

    /// <summary>A section folded lengthwise, then a section laid open.</summary>
    Mixed,

    /// <summary>Leftovers spread side by side, one layer.</summary>
    Remnants,

    /// <summary>Whichever form needs least cloth; the planner tries those that the cloth and the pieces allow.</summary>
    Best,
}
