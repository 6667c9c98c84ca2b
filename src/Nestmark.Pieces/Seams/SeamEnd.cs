using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>How two sides come together at one end of a seam.</summary>
/// <param name="First">Corner of the first side, as "front.B".</param>
/// <param name="Second">Corner of the second side.</param>
/// <param name="FirstSeam">Allowance of the first side's edge there.</param>
/// <param name="SecondSeam">Allowance of the second side's edge there.</param>
/// <param name="FirstCrossing">The edge that crosses the first side there, as "front.A-B".</param>
/// <param name="SecondCrossing">The edge that crosses the second side there.</param>
/// <param name="FirstHem">Allowance of the edge that crosses the first side there, as of a hem.</param>
/// <param name="SecondHem">Allowance of the edge that crosses the second side there.</param>
/// <param name="PointDegrees">How far the crossing edges are from running on across the seam: above zero they make a point outward, below zero a dent.</param>
public sealed record SeamEnd(
    string First, string Second, Length FirstSeam, Length SecondSeam,
    string FirstCrossing, string SecondCrossing, Length FirstHem, Length SecondHem, double PointDegrees)
{
    /// <summary>How much further the first side reaches there, what is taken up counted, when both are pinned at <see cref="PinnedAt"/>; below zero where the second does.</summary>
    public required Length Step { get; init; }

    /// <summary>The notch next to this end that both sides have; <c>null</c> where there is none and sewing begins at the other end (or at this one, if it is the first).</summary>
    public required NotchAlong? PinnedAt { get; init; }
}
