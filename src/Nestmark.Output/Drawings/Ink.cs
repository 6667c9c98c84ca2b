namespace Nestmark.Output.Drawings;

/// <summary>How a line is drawn.</summary>
/// <param name="WidthMillimeters">Above zero.</param>
/// <param name="Style">How it is broken.</param>
/// <param name="GrayRatio">0 black to 1 white.</param>
internal sealed record Ink(double WidthMillimeters, LineStyle Style = LineStyle.Solid, double GrayRatio = 0)
{
    /// <summary>Lengths of dashes and spaces by turns; empty for a solid line.</summary>
    public double[] DashesMillimeters => Style switch
    {
        LineStyle.Dashed => [Unit * 3, Unit * 2],
        LineStyle.Dotted => [Unit * 0.6, Unit * 1.4],
        LineStyle.DashDot => [Unit * 5, Unit * 1.2, Unit * 1, Unit * 1.2],
        _ => [],
    };

    // Dashes grow with the pen, but stay readable for hair lines.
    private double Unit => Math.Max(0.5, 5 * WidthMillimeters);
}
