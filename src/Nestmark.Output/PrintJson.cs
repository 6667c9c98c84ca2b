using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The part of the report about a matched print.</summary>
internal static class PrintJson
{
    /// <summary>Writes the key matching of a cloth; nothing where nothing is matched.</summary>
    public static void Write(Utf8JsonWriter json, ClothPlan cloth)
    {
        if (cloth.Matching is not { } cost)
            return;
        json.WriteStartObject("matching");
        json.WriteStartArray("rules");
        foreach (string rule in cloth.Rules)
            json.WriteStringValue(rule);
        json.WriteEndArray();
        WriteLength(json, "firstBar_mm", cloth.Marker.FirstBar);
        WriteLength(json, "plainLength_mm", cost.PlainLength);
        WriteLength(json, "extra_mm", cost.ExtraLength);
        json.WriteNumber("stackedPieces", cost.StackedPieces);
        WriteLength(json, "ruleOfThumb_mm", cost.RuleOfThumb);
        json.WriteEndObject();
    }

    private static void WriteLength(Utf8JsonWriter json, string key, Length? length)
    {
        if (length is { } known)
            json.WriteNumber(key, known.Micrometers / 1000m);
        else
            json.WriteNull(key);
    }
}
