using System.Globalization;

namespace Nestmark.Bench.Garments;

/// <summary>One measuring run.</summary>
/// <param name="Case">Name of the case.</param>
/// <param name="Kind">What to measure.</param>
/// <param name="Seconds">Seconds of the search; for <see cref="GarmentRunKind.Rate"/>, after its first lay.</param>
/// <param name="Threads">Threads of the search.</param>
/// <param name="Seed">Of pieces and search.</param>
/// <param name="Seeds">How many seeds, from that one on, the lengths are measured with.</param>
/// <param name="GapMillimeters">Between cutting lines.</param>
/// <param name="TiltDegrees">Largest deviation from the grain.</param>
/// <param name="Tuning">Numbers of the search to change, each Name=value.</param>
internal sealed record GarmentOptions(string Case, GarmentRunKind Kind, double Seconds, int Threads, long Seed, int Seeds, double GapMillimeters, double TiltDegrees, IReadOnlyList<string> Tuning)
{
    /// <summary>The command line that asks for this run.</summary>
    public string[] Arguments =>
    [
        "garments", "--case", Case, "--run", Kind.ToString(), "--seconds", Text(Seconds), "--threads", Text(Threads),
        "--seed", Text(Seed), "--gap", Text(GapMillimeters), "--tilt", Text(TiltDegrees), "--tune", string.Join(',', Tuning),
    ];

    private static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
