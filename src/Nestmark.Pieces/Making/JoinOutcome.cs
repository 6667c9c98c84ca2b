namespace Nestmark.Pieces.Making;

/// <summary>Whether a corner could be made as asked.</summary>
internal enum JoinOutcome
{
    /// <summary>As the edges say.</summary>
    AsAsked,

    /// <summary>An inner corner without room; the ring passes through the corner itself, for the clean-up to cut away.</summary>
    ThroughCorner,

    /// <summary>A reflected end beside a hem that curves: folded up along the curve it lies farther beside the piece than is to be passed over.</summary>
    ReflectedOffCurve,

    /// <summary>The squared or reflected end had no place; the corner is mitred.</summary>
    MitredInstead,
}
