namespace Nestmark.Pieces.Making;

/// <summary>Whether a corner could be made as asked.</summary>
internal enum JoinOutcome
{
    /// <summary>As the edges say.</summary>
    AsAsked,

    /// <summary>The squared or reflected end had no place; the corner is mitred.</summary>
    MitredInstead,
}
