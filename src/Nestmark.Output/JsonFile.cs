using System.Text.Encodings.Web;
using System.Text.Json;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Output;

/// <summary>How this program writes JSON: indented, lengths in millimeters to the micrometer, any text as it is.</summary>
internal static class JsonFile
{
    /// <summary>For every file.</summary>
    public static JsonWriterOptions Options { get; } = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Millimeters; a decimal writes whole micrometers exactly, a double may not.</summary>
    public static decimal Millimeters(long micrometers) => micrometers / 1000m;

    /// <summary>A length in millimeters.</summary>
    public static void WriteLength(Utf8JsonWriter json, string key, Length length) => json.WriteNumber(key, Millimeters(length.Micrometers));

    /// <summary>A text. Halves of letters, which JSON cannot hold, become the replacement character; all else stays as it is.</summary>
    public static void WriteText(Utf8JsonWriter json, string key, string text) =>
        json.WriteString(key, string.Concat(text.EnumerateRunes().Select(rune => rune.ToString())));

    /// <summary>A piece that cannot lie on its cloth.</summary>
    public static void WriteUnplaced(Utf8JsonWriter json, Unplaced unplaced)
    {
        json.WriteStartObject();
        WriteText(json, "piece", unplaced.Piece);
        WriteText(json, "reason", unplaced.Reason);
        WriteText(json, "size", unplaced.Size);
        json.WriteEndObject();
    }

    /// <summary>A direction rule as the job file writes it.</summary>
    public static string NapKey(Nap nap) => nap switch
    {
        Nap.OneWay => "one-way",
        Nap.BySize => "by-size",
        _ => "none",
    };
}
