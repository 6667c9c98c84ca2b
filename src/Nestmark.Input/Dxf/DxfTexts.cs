using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Nestmark.Input.Dxf;

/// <summary>What texts of a drawing say: escapes undone, and "KEY: value" taken apart.</summary>
internal static class DxfTexts
{
    private const RegexOptions Safe = RegexOptions.NonBacktracking | RegexOptions.CultureInvariant;
    private static readonly Regex Field = new(@"^\s*([^:]{1,40}?)\s*:\s*(.*?)\s*$", Safe);
    private static readonly Regex Unicode = new(@"\\U\+([0-9A-Fa-f]{4})", Safe);
    private static readonly Regex Percent = new(@"%%([0-9]{3}|[A-Za-z%])", Safe);
    private static readonly Regex Formatting = new(@"\\[ACcFfHhQTWp][^;\\{}]*;|\\[LlOoKk]|[{}]", Safe);

    /// <summary>The text as people read it.</summary>
    public static string Plain(string text, string type)
    {
        text = Unicode.Replace(text, match => Letter(int.Parse(match.Groups[1].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture)));
        text = Percent.Replace(text, match => OfPercent(match.Groups[1].Value));
        if (type == "MTEXT")
            text = Formatting.Replace(text.Replace("\\P", " ", StringComparison.Ordinal), "");
        StringBuilder plain = new();
        foreach (char letter in text)
            plain.Append(char.IsControl(letter) ? ' ' : letter);
        return plain.ToString().Trim();
    }

    /// <summary>Key in capitals and value of "KEY: value"; <c>null</c> for other texts.</summary>
    public static (string Key, string Value)? FieldOf(string text)
    {
        Match match = Field.Match(text);
        return match.Success ? (match.Groups[1].Value.ToUpperInvariant(), match.Groups[2].Value) : null;
    }

    /// <summary>Whether a text on a layer of points is a mark of a grade rule, as "# 12".</summary>
    public static bool IsGradeMark(string text) => text.StartsWith('#') && int.TryParse(text.AsSpan(1).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out _);

    private static string OfPercent(string code) => code switch
    {
        "d" or "D" => "°",
        "p" or "P" => "±",
        "c" or "C" => "Ø",
        "%" => "%",
        _ when int.TryParse(code, NumberStyles.None, CultureInfo.InvariantCulture, out int letter) => Letter(letter),
        _ => "",
    };

    private static string Letter(int code) => code is >= 0xD800 and <= 0xDFFF ? "?" : ((char)code).ToString();
}
