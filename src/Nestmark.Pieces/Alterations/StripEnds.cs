namespace Nestmark.Pieces.Alterations;

/// <summary>How a strip that is added to an edge ends at its corners.</summary>
public enum StripEnds
{
    /// <summary>Square to the edge.</summary>
    Square,

    /// <summary>As the mirror image, about the edge, of the piece beside it, so that it lies on the piece when it is turned up.</summary>
    Reflected,

    /// <summary>The edges beside it run on.</summary>
    AlongSides,
}
