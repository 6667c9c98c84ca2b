using Nestmark.Geometry;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Seams;

namespace Nestmark.Input.Seams;

/// <summary>Reads what a seam takes up: the keys ease, gather, pleat, on and between.</summary>
internal static class TakeUpReader
{
    private static readonly (string Key, TakeUpKind Kind)[] Kinds = [("ease", TakeUpKind.Ease), ("gather", TakeUpKind.Gather), ("pleat", TakeUpKind.Pleat)];

    private static readonly (string, SeamSide)[] Sides = [("first", SeamSide.First), ("second", SeamSide.Second)];

    /// <summary>The take-up, or <c>null</c> for none.</summary>
    public static TakeUp? Read(MapReader seam, JobContext context)
    {
        (string Key, TakeUpKind Kind)[] given = [.. Kinds.Where(kind => seam.Find(kind.Key) is not null)];
        SeamSide side = seam.ReadWord("on", Sides, SeamSide.First);
        (ZoneEnd? from, ZoneEnd? to) = Zone(seam, context);
        if (given.Length > 1)
            context.Error(seam.Find(given[1].Key)!.Key, seam.PathOf(given[1].Key), SeamFaults.TwoTakeUps(given[0].Key, given[1].Key));
        if (given.Length > 0)
        {
            (Length? Amount, double? Ratio) much = seam.Read(given[0].Key, text => Amount(text, context), (null, null));
            return new TakeUp(given[0].Kind, side, much.Amount, much.Ratio, from, to);
        }
        foreach (string key in new[] { "on", "between" })
        {
            if (seam.Find(key) is MapEntry entry)
                context.Error(entry.Key, seam.PathOf(key), SeamFaults.WithoutTakeUp(key));
        }
        return null;
    }

    /// <summary>A ratio "1.5 to 1" or "1.5:1": flat to finished, from 1 to 10.</summary>
    public static Reading<double> Ratio(string text)
    {
        string[] parts = text.Replace(" to ", ":", StringComparison.Ordinal).Split(':');
        if (parts.Length != 2 || parts[1].Trim() != "1")
            return new(0, SeamFaults.RatioRange(text));
        Reading<ScannedNumber> number = NumberScanner.Scan(parts[0]);
        if (number.Value is not ScannedNumber scanned)
            return new(0, number.Fault);
        return scanned.Rest.Length == 0 && scanned.Value is >= 1 and <= 10 ? new((double)scanned.Value, null) : new(0, SeamFaults.RatioRange(text));
    }

    private static Reading<(Length? Amount, double? Ratio)> Amount(string text, JobContext context)
    {
        string trimmed = text.Trim();
        if (trimmed == "to fit")
            return new((null, null), null);
        if (trimmed.Contains(':', StringComparison.Ordinal) || trimmed.Contains(" to ", StringComparison.Ordinal))
        {
            Reading<double> ratio = Ratio(trimmed);
            return new((null, ratio.Value), ratio.Fault);
        }
        if (trimmed.EndsWith('%'))
        {
            Reading<double> part = RatioText.Percent(trimmed);
            return new((null, 1 + part.Value), part.Fault);
        }
        Reading<Length> length = context.ZeroOrMore(trimmed);
        return length.Fault is null || char.IsAsciiDigit(trimmed[0]) ? new((length.Value, null), length.Fault) : new(default, SeamFaults.TakeUpForm(text));
    }

    private static (ZoneEnd? From, ZoneEnd? To) Zone(MapReader seam, JobContext context)
    {
        if (seam.Find("between") is not MapEntry entry || entry.Value is BrokenNode)
            return (null, null);
        if (entry.Value is ListNode { Items: [TextNode { Text.Length: > 0 } from, TextNode { Text.Length: > 0 } to] })
            return (End(from.Text.Trim(), context), End(to.Text.Trim(), context));
        context.Error(entry.Value, seam.PathOf("between"), SeamFaults.BetweenForm());
        return (null, null);
    }

    private static ZoneEnd End(string text, JobContext context)
    {
        if (text.StartsWith("notch ", StringComparison.Ordinal) && RatioText.Count(text[6..].Trim(), "notches") is { Fault: null } number)
            return new ZoneEnd("", number.Value, Length.Zero);
        Reading<Length> length = context.ZeroOrMore(text);
        return length.Fault is null ? new ZoneEnd("", 0, length.Value) : new ZoneEnd(text, 0, Length.Zero);
    }
}
