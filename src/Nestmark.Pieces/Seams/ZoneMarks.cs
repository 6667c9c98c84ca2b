namespace Nestmark.Pieces.Seams;

/// <summary>Whether the zone of a take-up is drawn on the pieces.</summary>
public enum ZoneMarks
{
    /// <summary>Notches at its ends on both sides, and a line within it on the side that is taken up.</summary>
    Drawn,

    /// <summary>Nothing is drawn.</summary>
    None,
}
