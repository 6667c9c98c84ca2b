using System.Globalization;

namespace Nestmark.Output.PieceSheets;

/// <summary>Scales at which pieces are drawn: round ones, so that a measure on paper is easily turned into one on cloth.</summary>
internal static class SheetScale
{
    private static readonly double[] Reductions = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500, 1000];

    /// <summary>By how much a piece is made smaller to fit a room; 1 is true size.</summary>
    public static double ReductionFor(double widthMillimeters, double heightMillimeters, double roomWidthMillimeters, double roomHeightMillimeters)
    {
        double needed = Math.Max(widthMillimeters / roomWidthMillimeters, heightMillimeters / roomHeightMillimeters);
        return Array.Find(Reductions, reduction => reduction >= needed) is > 0 and double found ? found : needed;
    }

    /// <summary>"true size" or "scale 1 : 5".</summary>
    public static string Words(double reductionRatio) =>
        reductionRatio == 1 ? "true size" : string.Create(CultureInfo.InvariantCulture, $"scale 1 : {reductionRatio:0.##}");
}
