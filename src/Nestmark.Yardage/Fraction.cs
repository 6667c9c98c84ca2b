using System.Globalization;

namespace Nestmark.Yardage;

/// <summary>Whole numbers and fractions as people measure: "3/8", "2", "1 7/8".</summary>
internal static class Fraction
{
    /// <summary>A count of equal parts, in lowest terms.</summary>
    /// <param name="parts">How many parts; zero or more.</param>
    /// <param name="partsInOne">Parts that make one; above zero.</param>
    public static string Text(long parts, long partsInOne)
    {
        long whole = parts / partsInOne;
        long rest = parts % partsInOne;
        long divisor = (long)System.Numerics.BigInteger.GreatestCommonDivisor(rest, partsInOne);
        string fraction = string.Create(CultureInfo.InvariantCulture, $"{rest / divisor}/{partsInOne / divisor}");
        string wholeText = whole.ToString(CultureInfo.InvariantCulture);
        if (rest == 0)
            return wholeText;
        return whole == 0 ? fraction : wholeText + " " + fraction;
    }
}
