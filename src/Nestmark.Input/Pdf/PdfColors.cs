using System.Globalization;

namespace Nestmark.Input.Pdf;

/// <summary>Colors of lines as "#rrggbb".</summary>
internal static class PdfColors
{
    private static readonly (string Name, string Code)[] Names =
    [
        ("black", "#000000"), ("white", "#ffffff"), ("red", "#ff0000"), ("green", "#00ff00"), ("blue", "#0000ff"),
        ("yellow", "#ffff00"), ("cyan", "#00ffff"), ("magenta", "#ff00ff"), ("gray", "#808080"),
    ];

    /// <summary>The code of a color from its parts, each 0 to 1.</summary>
    public static string CodeOf(double redRatio, double greenRatio, double blueRatio) =>
        string.Create(CultureInfo.InvariantCulture, $"#{Part(redRatio):x2}{Part(greenRatio):x2}{Part(blueRatio):x2}");

    /// <summary>What a job wrote, as a code: names become codes, "#f00" becomes "#ff0000".</summary>
    public static string Normal(string text)
    {
        string color = text.Trim().ToLowerInvariant();
        if (Array.Find(Names, pair => pair.Name == color).Code is string code)
            return code;
        return color is ['#', char red, char green, char blue] ? $"#{red}{red}{green}{green}{blue}{blue}" : color;
    }

    private static int Part(double ratio) => double.IsFinite(ratio) ? (int)Math.Round(Math.Clamp(ratio, 0, 1) * 255) : 0;
}
