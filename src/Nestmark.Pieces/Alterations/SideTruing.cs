namespace Nestmark.Pieces.Alterations;

/// <summary>How the edges that a cut has crossed are drawn anew.</summary>
public enum SideTruing
{
    /// <summary>Stretched evenly from corner to corner: straight stays straight, curves stay smooth.</summary>
    Smooth,

    /// <summary>Straight from corner to corner.</summary>
    Straight,

    /// <summary>Left as the cut leaves them, with a straight piece where paper was put in.</summary>
    AsCut,
}
