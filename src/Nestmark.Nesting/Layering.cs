namespace Nestmark.Nesting;

/// <summary>Where a lay has both, how many layers a piece is cut from.</summary>
public enum Layering
{
    /// <summary>Through two layers at once.</summary>
    TwoLayers,

    /// <summary>From one layer, copy by copy.</summary>
    OneLayer,
}
