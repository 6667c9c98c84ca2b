namespace Nestmark.Pieces;

/// <summary>Whether a piece follows the nap of its cloth.</summary>
public enum DirectionRule
{
    /// <summary>As the cloth says.</summary>
    AsCloth,

    /// <summary>Either way up whatever the nap: a pocket bag, an inner facing.</summary>
    EitherWay,

    /// <summary>One way up even on cloth without nap.</summary>
    OneWay,
}
