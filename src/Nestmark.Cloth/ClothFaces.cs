namespace Nestmark.Cloths;

/// <summary>Which sides of the cloth may show.</summary>
public enum ClothFaces
{
    /// <summary>One right side: a copy is turned over only as the mirror image of another.</summary>
    OneRightSide,

    /// <summary>Alike on both sides: every copy may lie either side up.</summary>
    TwoRightSides,
}
