using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>Keys that strips of all kinds share.</summary>
internal static class StripWords
{
    public static readonly (string, StripMake)[] Makes = [("double", StripMake.Double), ("single", StripMake.Single)];

    public static readonly (string, StripRun)[] Runs = [("along", StripRun.Along), ("across", StripRun.Across)];

    /// <summary>The key strips: how many; <c>null</c> when they are counted.</summary>
    public static int? Count(MapReader reader) =>
        reader.Find("strips") is null ? null : reader.Read("strips", text => RatioText.Count(text, "strips"), 1);

    /// <summary>Says that counted pieces take no cut of their own.</summary>
    public static void RefuseCut(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        if (cut is not null)
            reader.Context.Error(shape.Key, reader.Path, DraftingFaults.CutIsCounted(shape.Key.Text));
    }

    /// <summary>A cut of its own goes with one strip along the grain.</summary>
    public static void RefuseCutAcross(MapEntry shape, MapReader reader, StripRun run, int? strips, CutQuantity? cut)
    {
        if (run == StripRun.Across || strips > 1)
            RefuseCut(shape, reader, cut);
    }
}
