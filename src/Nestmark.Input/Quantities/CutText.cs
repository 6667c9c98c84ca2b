using System.Globalization;
using Nestmark.Pieces;

namespace Nestmark.Input.Quantities;

/// <summary>Reads cut instructions: "2", "1 pair", "2 pairs", "1 on fold".</summary>
internal static class CutText
{
    public static Reading<CutQuantity> Read(string text)
    {
        string[] words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        CutKind? kind = string.Join(' ', words.Skip(1)) switch
        {
            "" => CutKind.Copies,
            "pair" or "pairs" => CutKind.Pairs,
            "on fold" or "on the fold" => CutKind.OnFold,
            _ => null,
        };
        if (kind is null || words.Length == 0 || !decimal.TryParse(words[0], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out decimal count))
            return new(default, QuantityFaults.Cut(text));
        return count is >= 1 and <= 1000
            ? new(new CutQuantity((int)count, kind.Value), null)
            : new(default, QuantityFaults.CutCount(text));
    }
}
