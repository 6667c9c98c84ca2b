using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;

namespace Nestmark.Input;

/// <summary>Reads the keys repeat and border of a cloth.</summary>
internal static class PrintReader
{
    private static readonly (string, PrintBalance)[] Balances = [("yes", PrintBalance.Even), ("no", PrintBalance.Uneven)];

    private static readonly (string, BorderEdge)[] Edges = [("near", BorderEdge.Near), ("far", BorderEdge.Far), ("both", BorderEdge.Both)];

    /// <summary>The stripes or plaid; <c>null</c> for none.</summary>
    public static ClothRepeat? Repeat(MapReader cloth, JobContext context)
    {
        if (cloth.Find("repeat") is not MapEntry entry || context.AsMap(entry.Value, cloth.PathOf("repeat")) is not MapReader repeat)
            return null;
        ClothRepeat read = new(
            LengthOf(repeat, "along", context.AboveZero), LengthOf(repeat, "across", context.AboveZero),
            repeat.ReadWord("even", Balances, PrintBalance.Even), LengthOf(repeat, "first_bar", context.ZeroOrMore));
        if (repeat.Find("along") is null && repeat.Find("across") is null)
            context.Error(entry.Key, repeat.Path, MatchFaults.EmptyRepeat());
        repeat.RefuseTheRest();
        return read;
    }

    /// <summary>The border; <c>null</c> for none.</summary>
    public static ClothBorder? Border(MapReader cloth, JobContext context)
    {
        if (cloth.Find("border") is not MapEntry entry || context.AsMap(entry.Value, cloth.PathOf("border")) is not MapReader border)
            return null;
        ClothBorder read = new(
            border.ReadWord("edge", Edges, BorderEdge.Near),
            border.Read("from", context.ZeroOrMore, Length.Zero), border.Read("depth", context.AboveZero, Length.Zero));
        foreach (string key in (string[])["edge", "from", "depth"])
        {
            if (border.Find(key) is null)
                context.Error(entry.Key, border.PathOf(key), MatchFaults.EmptyBorder(key));
        }
        border.RefuseTheRest();
        return read;
    }

    private static Length? LengthOf(MapReader reader, string key, Func<string, Reading<Length>> read) =>
        reader.Read<Length?>(key, text => read(text) is var reading ? new(reading.Value, reading.Fault) : default, null);
}
