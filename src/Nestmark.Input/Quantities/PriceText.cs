using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Input.Quantities;

/// <summary>Reads prices: "18.50 per m", "€12 per yd", "9 EUR per 50 cm".</summary>
internal static class PriceText
{
    private const string Per = " per ";

    public static Reading<ClothPrice> Read(string text)
    {
        int split = text.IndexOf(Per, StringComparison.Ordinal);
        if (split < 0)
            return new(null, text.Contains(',') ? QuantityFaults.DecimalComma(text) : QuantityFaults.Price(text));
        string amountText = text[..split].Trim();
        int digitAt = amountText.IndexOfAny(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '-']);
        if (digitAt < 0)
            return new(null, QuantityFaults.Price(text));
        Reading<ScannedNumber> amount = NumberScanner.Scan(amountText[digitAt..]);
        if (amount.Value is not ScannedNumber scanned)
            return new(null, amount.Fault);
        string before = amountText[..digitAt].Trim();
        if (scanned.Value < 0 || !IsCurrency(before) || !IsCurrency(scanned.Rest) || (before.Length > 0 && scanned.Rest.Length > 0))
            return new(null, QuantityFaults.Price(text));
        Reading<Length> per = PerLength(text[(split + Per.Length)..].Trim());
        return per.Fault is null ? new(new ClothPrice(scanned.Value, per.Value, before + scanned.Rest), null) : new(null, per.Fault);
    }

    private static Reading<Length> PerLength(string text)
    {
        string withNumber = LengthUnits.Find(text) is null ? text : "1 " + text;
        if (NumberScanner.Scan(withNumber).Value is { Rest.Length: 0 })
            return new(default, QuantityFaults.Price(text));
        return LengthText.Read(withNumber, LengthUnit.Meter, LengthRange.AboveZero);
    }

    private static bool IsCurrency(string text) =>
        text.Length <= 4 && text.All(character => char.IsLetter(character) || char.GetUnicodeCategory(character) == System.Globalization.UnicodeCategory.CurrencySymbol);
}
