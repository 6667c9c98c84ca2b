using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>From the length of a lay to the length to buy.</summary>
public static class Purchasing
{
    /// <summary>What to buy: lay length and both ends, widened for the first wash, rounded up to the shop's step.</summary>
    /// <param name="cloth">The cloth: ends, shrinkage, step and price.</param>
    /// <param name="layLength">Length of cloth that the marker takes; zero when nothing is placed, and then nothing is bought.</param>
    /// <param name="system">Units that come first in texts.</param>
    /// <exception cref="ArgumentException">The lay length is below zero, the shrinkage is not within 0 up to below 1, or the length lies beyond 1 km.</exception>
    /// <remarks>
    /// need / (1 - s), rounded up last: references/trade.md 2.1 and 2.2. Counted in decimals of whole micrometers, so that noise adds no step.
    /// Cost is rounded to hundredths, half up.
    /// </remarks>
    public static Purchase For(Cloth cloth, Length layLength, MeasureSystem system)
    {
        if (layLength < Length.Zero)
            throw new ArgumentException("A lay length must be zero or more.", nameof(layLength));
        Length withEnds = layLength == Length.Zero ? Length.Zero : layLength + cloth.Ends * 2;
        Length beforeWash = BeforeWash(withEnds, cloth.LengthShrinkageRatio);
        Length toBuy = beforeWash.RoundedUpTo(cloth.Buying.Step);
        MeasureSystem other = LengthWords.Other(system);
        return new Purchase(
            layLength, withEnds, beforeWash, toBuy,
            LengthWords.ToBuy(toBuy, system),
            LengthWords.ToBuy(toBuy.RoundedUpTo(LengthWords.UsualStep(other)), other),
            CostOf(cloth.Buying.Price, toBuy), cloth.Buying.Price?.Currency ?? "");
    }

    /// <summary>The length that shrinks to <paramref name="need"/> in the first wash: need / (1 - s), rounded up to a micrometer.</summary>
    /// <param name="need">Zero or more.</param>
    /// <param name="shrinkageRatio">0 up to below 1.</param>
    /// <exception cref="ArgumentException">The shrinkage is not within 0 up to below 1, or the answer lies beyond 1 km.</exception>
    public static Length BeforeWash(Length need, double shrinkageRatio)
    {
        if (!(shrinkageRatio is >= 0 and < 1))
            throw new ArgumentException("A shrinkage must lie within 0 up to below 1.", nameof(shrinkageRatio));
        return Length.FromMicrometers((long)Math.Ceiling(need.Micrometers / (1 - (decimal)shrinkageRatio)));
    }

    private static decimal? CostOf(ClothPrice? price, Length toBuy) => price is null
        ? null
        : Math.Round(price.Amount * toBuy.Micrometers / price.Per.Micrometers, 2, MidpointRounding.AwayFromZero);
}
