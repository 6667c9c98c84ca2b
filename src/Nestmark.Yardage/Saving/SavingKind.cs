namespace Nestmark.Yardage.Saving;

/// <summary>What is changed to save cloth.</summary>
public enum SavingKind
{
    /// <summary>The cloth is spread another way.</summary>
    OtherLay,

    /// <summary>Wider cloth, as it is on sale.</summary>
    WiderCloth,

    /// <summary>A piece lies across the grain.</summary>
    TurnedAcross,

    /// <summary>A piece is cut in two, where the job permits a seam.</summary>
    Pieced,

    /// <summary>Seam allowances of 1 cm, or 3/8 in.</summary>
    NarrowerSeams,

    /// <summary>No gap between cutting lines.</summary>
    NoGap,
}
