using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>What walking both sides of a seam along the seam line found.</summary>
public sealed record SeamWalk
{
    /// <summary>What was walked first, as "front.B-C (half)".</summary>
    public required string First { get; init; }

    /// <summary>What was walked second.</summary>
    public required string Second { get; init; }

    /// <summary>Length of the first side.</summary>
    public required Length FirstLength { get; init; }

    /// <summary>Length of the second side.</summary>
    public required Length SecondLength { get; init; }

    /// <summary>What is taken up on the taken-up side; zero without.</summary>
    public required Length TakenUp { get; init; }

    /// <summary>First less second after what is taken up: above zero where the first side is still too long.</summary>
    public required Length Difference { get; init; }

    /// <summary>Flat to finished within the zone that is taken up, or the longer to the shorter side where nothing is; 1 or more, but for a side that is too short to be taken up.</summary>
    public required double Ratio { get; init; }

    /// <summary>Where the zone lies on the taken-up side: from and to; <c>null</c> without a take-up.</summary>
    public required (Length From, Length To)? Zone { get; init; }

    /// <summary>Whether the sides meet.</summary>
    public required SeamVerdict Verdict { get; init; }

    /// <summary>Notches that belong together.</summary>
    public required ImmutableArray<NotchMeeting> Meetings { get; init; }

    /// <summary>Notches of the first side without a partner.</summary>
    public required ImmutableArray<NotchAlong> FirstAlone { get; init; }

    /// <summary>Notches of the second side without a partner.</summary>
    public required ImmutableArray<NotchAlong> SecondAlone { get; init; }

    /// <summary>The start and the end, in this order; empty where a side is a plain length or counts several times, or where the seam closes on itself.</summary>
    public required ImmutableArray<SeamEnd> Ends { get; init; }

    /// <summary>Both pieces' heights along the grain between the edges that cross the seam, where all four are level; <c>null</c> where they are not.</summary>
    public required (Length First, Length Second)? Heights { get; init; }

    /// <summary>Whether one side is twice the other within the tolerance and the shorter one is of a half piece on the fold: both halves may be meant.</summary>
    public required bool SeemsHalved { get; init; }
}
