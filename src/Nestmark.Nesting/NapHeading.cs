using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>Which way up a turn puts the nap. A flip over the grainline does not change it.</summary>
public static class NapHeading
{
    /// <summary>0 for turns nearer to a rule's first way, 1 for those half a turn from it: angles from -22.5 up to 157.5 degrees are 0.</summary>
    public static int Of(Turn turn) => (turn.Angle + Angle.FromDegrees(22.5)).TotalDegrees < 180 ? 0 : 1;
}
