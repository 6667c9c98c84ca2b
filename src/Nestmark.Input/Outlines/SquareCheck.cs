using Nestmark.Geometry;

namespace Nestmark.Input.Outlines;

/// <summary>Compares a drawn test square with its true side.</summary>
/// <remarks>Accepted: 0.5 % either way, as 0.5 mm on 10 cm; references/trade.md 10 accepts 0.5 mm on 50.</remarks>
internal static class SquareCheck
{
    /// <summary>Largest accepted deviation.</summary>
    public const double ToleranceRatio = 0.005;

    /// <summary>What is wrong with a square of these sides, or <c>null</c>.</summary>
    /// <param name="widthMillimeters">As drawn, scale included.</param>
    /// <param name="heightMillimeters">As drawn, scale included.</param>
    /// <param name="side">Its true side.</param>
    /// <param name="scaleRatio">The scale that was given; 1 for none.</param>
    public static Fault? FaultOf(double widthMillimeters, double heightMillimeters, Length side, double scaleRatio)
    {
        if (!IsSquare(widthMillimeters, heightMillimeters))
            return ScaleFaults.NotSquare(widthMillimeters, heightMillimeters);
        double measured = (widthMillimeters + heightMillimeters) / 2;
        return Math.Abs(measured / side.TotalMillimeters - 1) <= ToleranceRatio ? null : ScaleFaults.WrongSize(measured, side.TotalMillimeters, scaleRatio);
    }

    /// <summary>Whether both sides are above zero and equal within the tolerance.</summary>
    public static bool IsSquare(double widthMillimeters, double heightMillimeters) =>
        widthMillimeters > 0 && heightMillimeters > 0 && Math.Abs(widthMillimeters / heightMillimeters - 1) <= ToleranceRatio;
}
