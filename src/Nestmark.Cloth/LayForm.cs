namespace Nestmark.Cloths;

/// <summary>How the cloth is spread for cutting.</summary>
public enum LayForm
{
    /// <summary>One layer, full usable width.</summary>
    Open,

    /// <summary>Folded lengthwise, right sides together, selvages together: two layers, half the usable width, fold along y = 0.</summary>
    Folded,
}
