using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>What is decided about a draft before it is laid.</summary>
/// <param name="Turn">Lays the grain along x.</param>
/// <param name="Widths">One allowance an edge, in the order of the outline's edges.</param>
/// <param name="Fold">Number of the fold edge; <c>null</c> for none.</param>
/// <param name="PointLimitRatio">1 or more.</param>
internal sealed record LayingPlan(Turn Turn, ImmutableArray<EdgeAllowance> Widths, int? Fold, double PointLimitRatio)
{
    /// <summary>Whether the piece lies turned over, so that counter-clockwise runs against the letters.</summary>
    public bool IsTurnedOver => Turn.Facing == Facing.Flipped;
}
