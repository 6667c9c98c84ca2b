using Nestmark.Geometry;

namespace Nestmark.Input.Quantities;

/// <summary>Reads lengths: a number and a unit, or a bare number in the file's units.</summary>
internal static class LengthText
{
    private const decimal LimitMicrometers = 100_000_000;

    /// <summary>The length a text says, rounded to a micrometer.</summary>
    public static Reading<Length> Read(string text, LengthUnit bareUnit, LengthRange range)
    {
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(default, number.Fault);
        LengthUnit? unit = scanned.Rest.Length == 0 ? bareUnit : LengthUnits.Find(scanned.Rest);
        if (unit is null)
            return new(default, QuantityFaults.UnknownUnit(text, scanned.Rest));
        return InRange(text, scanned.Value, unit.Value, range);
    }

    private static Reading<Length> InRange(string text, decimal value, LengthUnit unit, LengthRange range)
    {
        // Compared before multiplying: the product of an absurd number could overflow.
        decimal perUnit = LengthUnits.MicrometersIn(unit);
        if (Math.Abs(value) > LimitMicrometers / perUnit)
            return new(default, QuantityFaults.LongerThanLimit(text));
        long micrometers = (long)Math.Round(value * perUnit, MidpointRounding.AwayFromZero);
        return range switch
        {
            LengthRange.AboveZero when micrometers <= 0 => new(default, QuantityFaults.NotAboveZero(text)),
            LengthRange.ZeroOrMore when micrometers < 0 => new(default, QuantityFaults.BelowZero(text)),
            _ => new(Length.FromMicrometers(micrometers), null),
        };
    }
}
