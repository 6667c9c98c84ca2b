using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>How reasons speak of lengths.</summary>
/// <param name="AtLeast">Text of a length that is needed: rounded up.</param>
/// <param name="AtMost">Text of a length that is there: rounded down.</param>
/// <param name="WidthsOnSale">Usual full widths of cloth, narrowest first.</param>
public sealed record LayWording(Func<Length, string> AtLeast, Func<Length, string> AtMost, ImmutableArray<Length> WidthsOnSale)
{
    private const long Tenth = 1_000;

    /// <summary>Centimeters with one decimal; 90, 115, 140, 150 and 160 cm cloth.</summary>
    /// <remarks>Widths: references/trade.md 1.1 ([GUTHRIE] 115, 150, up to 160; [THREADS-TPL] 135 to 145; 35 to 36 in as 90).</remarks>
    public static LayWording Metric { get; } = new(
        length => Centimeters(-Floor(-length.Micrometers)),
        length => Centimeters(Floor(length.Micrometers)),
        [.. new[] { 90, 115, 140, 150, 160 }.Select(centimeters => Length.FromCentimeters(centimeters))]);

    private static long Floor(long micrometers) => (long)Math.Floor(micrometers / (decimal)Tenth);

    private static string Centimeters(long tenths) => (tenths / 10m).ToString("0.#", CultureInfo.InvariantCulture) + " cm";
}
