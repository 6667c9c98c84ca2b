namespace Nestmark.Pieces.Seams;

/// <summary>Whether two sides meet.</summary>
public enum SeamVerdict
{
    /// <summary>Within half the tolerance.</summary>
    Meets,

    /// <summary>Within the tolerance.</summary>
    Near,

    /// <summary>Past the tolerance.</summary>
    Apart,
}
