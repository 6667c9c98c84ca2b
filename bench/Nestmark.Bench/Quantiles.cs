namespace Nestmark.Bench;

/// <summary>Medians and quartiles of measured figures.</summary>
internal static class Quantiles
{
    /// <summary>The figure that a part of all lie below, between two of them in a straight line.</summary>
    /// <param name="sorted">The figures, rising; one or more.</param>
    /// <param name="part">0 to 1; 0.5 for the median.</param>
    public static double Of(double[] sorted, double part)
    {
        double at = part * (sorted.Length - 1);
        int low = (int)at;
        return low + 1 < sorted.Length ? sorted[low] + (at - low) * (sorted[low + 1] - sorted[low]) : sorted[low];
    }
}
