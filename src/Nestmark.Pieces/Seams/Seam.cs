using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>Two sides that are sewn together: the first corner of the one meets the first corner of the other.</summary>
public sealed record Seam
{
    /// <summary>What the user calls it; never empty.</summary>
    public required string Name { get; init; }

    /// <summary>One side, walked in this order. One part or more.</summary>
    public required ImmutableArray<SeamTerm> First { get; init; }

    /// <summary>The other side, walked in this order. One part or more.</summary>
    public required ImmutableArray<SeamTerm> Second { get; init; }

    /// <summary>What is taken up; <c>null</c> where both sides are to be of one length.</summary>
    public required TakeUp? TakeUp { get; init; }

    /// <summary>Largest difference that still meets; above zero.</summary>
    public required Length Tolerance { get; init; }

    /// <summary>What is expected at its ends.</summary>
    public required CornerRule Corners { get; init; }

    /// <summary>Whether the zone is drawn on the pieces.</summary>
    public required ZoneMarks Marks { get; init; }
}
