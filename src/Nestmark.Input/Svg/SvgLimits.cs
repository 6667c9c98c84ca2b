namespace Nestmark.Input.Svg;

/// <summary>Bounds on drawings; references/formats.md 9.</summary>
internal static class SvgLimits
{
    public const long LongestFileBytes = 64L << 20;
    public const int DeepestElement = 256;
    public const int DeepestUse = 16;
    public const int MostInstances = 100_000;
    public const int MostEntityCharacters = 100_000;
    public const double LargestNumber = 1e9;
    public const double SilentGapMillimeters = 0.1;
    public const double NotedGapMillimeters = 2;
}
