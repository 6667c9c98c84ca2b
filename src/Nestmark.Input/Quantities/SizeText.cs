using Nestmark.Geometry;

namespace Nestmark.Input.Quantities;

/// <summary>Reads "length x width", as "16 x 18"; a bare first number takes the unit of the second ("16 x 18 cm").</summary>
internal static class SizeText
{
    public static Reading<(Length Length, Length Width)> Read(string text, LengthUnit bareUnit)
    {
        string[] sides = text.Split(['x', 'X', '×']);
        if (sides.Length != 2)
            return new(default, QuantityFaults.Size(text));
        Reading<Length> width = LengthText.Read(sides[1], bareUnit, LengthRange.AboveZero);
        LengthUnit firstUnit = NumberScanner.Scan(sides[1]).Value is { Rest: var word } && LengthUnits.Find(word) is LengthUnit unit ? unit : bareUnit;
        Reading<Length> length = LengthText.Read(sides[0], firstUnit, LengthRange.AboveZero);
        Fault? fault = length.Fault ?? width.Fault;
        return fault is null ? new((length.Value, width.Value), null) : new(default, fault);
    }
}
