using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>How a piece bears flaws of the cloth.</summary>
/// <param name="Bearing">Whether it may lie on them.</param>
/// <param name="Sensitive">The part that has to, in the coordinates of the piece; <c>null</c> for all of its cutting line.</param>
public sealed record FlawRule(FlawBearing Bearing, Polygon? Sensitive)
{
    /// <summary>Every part keeps off flaws.</summary>
    public static FlawRule Avoid { get; } = new(FlawBearing.KeepsOff, null);

    /// <summary>A piece that may lie on flaws: an interfacing, an inner facing.</summary>
    public static FlawRule Bear { get; } = new(FlawBearing.Bears, null);

    /// <summary>The area of a piece that keeps off flaws, or <c>null</c> when it bears them all.</summary>
    /// <param name="cuttingLine">The piece.</param>
    public Polygon? AreaOf(Polygon cuttingLine) => Bearing == FlawBearing.Bears ? null : Sensitive ?? cuttingLine;
}
