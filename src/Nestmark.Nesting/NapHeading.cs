using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>Which way up a turn puts the nap. Placements of one nap group must answer alike.</summary>
/// <remarks>
/// Right for every turn that <see cref="AllowedTurns"/> gives with a tilt below 45 degrees. A flipped copy is judged as the mirror image
/// that lies under it on a folded lay, which turns the opposite way round: along the grain nothing changes, across it 270 flipped goes with 90 plain.
/// </remarks>
public static class NapHeading
{
    /// <summary>0 for turns nearer to a rule's first way (0, 45 or 90 degrees), 1 for those half a turn from it: angles from -45 up to 135 degrees are 0.</summary>
    public static int Of(Turn turn)
    {
        Angle plain = turn.Facing == Facing.Flipped ? -turn.Angle : turn.Angle;
        return (plain + Angle.FromDegrees(45)).TotalDegrees < 180 ? 0 : 1;
    }
}
