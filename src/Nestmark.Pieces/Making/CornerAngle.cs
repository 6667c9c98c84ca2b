namespace Nestmark.Pieces.Making;

/// <summary>How sharply the seam line turns at a corner, and how far its point may reach.</summary>
/// <param name="Sine">Of the turn from the arriving to the leaving edge; above zero at an outer corner.</param>
/// <param name="Cosine">Of that turn.</param>
/// <param name="LimitMicrometers">Longest point: the limit times the wider allowance.</param>
internal readonly record struct CornerAngle(double Sine, double Cosine, double LimitMicrometers)
{
    /// <summary>How far lines are drawn out in search of a meeting point.</summary>
    public double ReachMicrometers => 20 * LimitMicrometers;

    public static CornerAngle Of(AllowanceSide arriving, AllowanceSide leaving, double pointLimitRatio)
    {
        double limit = pointLimitRatio * Math.Max(arriving.Width, leaving.Width);
        return new CornerAngle(-arriving.Along.Cross(leaving.Along), -arriving.Along.Dot(leaving.Along), limit);
    }

    /// <summary>From the corner to where both cut edges meet: sqrt(a² + b² + 2ab cosθ) / sinθ long, references/trade.md 3.3.</summary>
    public Vector Tip(AllowanceSide arriving, AllowanceSide leaving) =>
        -1 / Sine * (leaving.Width * arriving.Along + arriving.Width * leaving.Along);
}
