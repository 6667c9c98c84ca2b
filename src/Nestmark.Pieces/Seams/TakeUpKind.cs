namespace Nestmark.Pieces.Seams;

/// <summary>How the longer side of a seam is brought into the shorter one.</summary>
public enum TakeUpKind
{
    /// <summary>Worked in without folds.</summary>
    Ease,

    /// <summary>Drawn up on threads.</summary>
    Gather,

    /// <summary>Laid in folds.</summary>
    Pleat,
}
