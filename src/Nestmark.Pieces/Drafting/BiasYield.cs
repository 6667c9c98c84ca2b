using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>How much bias strip comes out of cloth.</summary>
/// <remarks>
/// references/trade.md 9.2. By area: length = side² / width. By whole strips ([TBS]): n = ceil(sqrt(T / 2w)), side = n w √2 and two seams, yield 2 n² w.
/// The rule by area promises strips that the last, narrower one cannot give.
/// </remarks>
public static class BiasYield
{
    private const double SqrtTwo = 1.4142135623730951;

    /// <summary>Length by area alone: side² / width.</summary>
    public static double LengthByAreaMillimeters(Length side, Length width) => side.TotalMillimeters * side.TotalMillimeters / width.TotalMillimeters;

    /// <summary>Side of a square by area alone: sqrt(length x width).</summary>
    public static double SideByAreaMillimeters(Length length, Length width) => Math.Sqrt(length.TotalMillimeters * width.TotalMillimeters);

    /// <summary>Whole strips that a square must hold in each half to give a length.</summary>
    /// <param name="length">Wanted; above zero.</param>
    /// <param name="width">Of the strip as cut; above zero.</param>
    public static int WholeStrips(Length length, Length width) =>
        Math.Max(1, (int)Math.Ceiling(Math.Sqrt(length.TotalMillimeters / (2 * width.TotalMillimeters)) - 1e-9));

    /// <summary>Side of the square that holds so many whole strips in each half, its two seams included: n w √2 + 2 seams.</summary>
    public static double SideForMillimeters(int strips, Length width, Length seam) => strips * width.TotalMillimeters * SqrtTwo + 2 * seam.TotalMillimeters;

    /// <summary>Length that so many whole strips give: 2 n² w.</summary>
    public static double LengthOfMillimeters(int strips, Length width) => 2.0 * strips * strips * width.TotalMillimeters;

    /// <summary>Length in whole strips from a rectangle sewn into a tube and cut round, the better of both ways; zero when it is too small.</summary>
    /// <param name="length">One side.</param>
    /// <param name="breadth">The other side.</param>
    /// <param name="width">Of the strip as cut; above zero.</param>
    /// <param name="seam">Allowance of the two seams; each side loses two of it, as the square does.</param>
    /// <remarks>A triangle of half a right angle is moved from one end to the other; the strips then run along the slanted ends, which are side x √2 long and side / √2 apart (geometry).</remarks>
    public static double LengthFromMillimeters(Length length, Length breadth, Length width, Length seam)
    {
        double along = Math.Max(0, (length - seam * 2).TotalMillimeters);
        double across = Math.Max(0, (breadth - seam * 2).TotalMillimeters);
        return Math.Max(OneWay(along, across), OneWay(across, along));

        double OneWay(double side, double other) => Math.Floor(side / (SqrtTwo * width.TotalMillimeters) + 1e-9) * other * SqrtTwo;
    }

    /// <summary>Longest strip with square ends at 45 degrees across a lay, between seam lines: depth √2 - width - 2 seams (geometry).</summary>
    public static double LongestSquareStripMillimeters(Length depth, Length width, Length seam) =>
        Math.Max(0, depth.TotalMillimeters * SqrtTwo - width.TotalMillimeters - 2 * seam.TotalMillimeters);

    /// <summary>Longest strip at 45 degrees across a lay, between seam lines: (depth - 2 seams) √2.</summary>
    public static double LongestStripMillimeters(Length depth, Length seam) => Math.Max(0, (depth - seam * 2).TotalMillimeters * SqrtTwo);
}
