using Nestmark.Geometry;

namespace Nestmark.Input.Quantities;

/// <summary>Words and exact factors of the units.</summary>
internal static class LengthUnits
{
    public const string Expected = "mm, cm, m, in, ft, yd or \"";

    private static readonly Dictionary<string, LengthUnit> ByWord = new(StringComparer.Ordinal)
    {
        ["mm"] = LengthUnit.Millimeter,
        ["cm"] = LengthUnit.Centimeter,
        ["m"] = LengthUnit.Meter,
        ["in"] = LengthUnit.Inch,
        ["\""] = LengthUnit.Inch,
        ["ft"] = LengthUnit.Foot,
        ["yd"] = LengthUnit.Yard,
    };

    public static LengthUnit? Find(string word) => ByWord.TryGetValue(word, out LengthUnit unit) ? unit : null;

    public static string WordOf(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimeter => "mm",
        LengthUnit.Centimeter => "cm",
        LengthUnit.Meter => "m",
        LengthUnit.Inch => "in",
        LengthUnit.Foot => "ft",
        _ => "yd",
    };

    /// <summary>Micrometers in one unit; exact (international yard and pound agreement, 1959).</summary>
    public static decimal MicrometersIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimeter => Length.MicrometersPerMillimeter,
        LengthUnit.Centimeter => 10_000,
        LengthUnit.Meter => 1_000_000,
        LengthUnit.Inch => Length.MicrometersPerInch,
        LengthUnit.Foot => 12 * Length.MicrometersPerInch,
        _ => Length.MicrometersPerYard,
    };
}
