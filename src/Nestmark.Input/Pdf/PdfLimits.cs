namespace Nestmark.Input.Pdf;

/// <summary>Bounds on PDF files; references/formats.md 9.</summary>
internal static class PdfLimits
{
    public const long LongestFileBytes = 64L << 20;
    public const long LongestStreamBytes = 64L << 20;
    public const long MostDecodedBytes = 192L << 20;
    public const int MostFilters = 3;
    public const int DeepestObject = 64;
    public const int MostPages = 500;
    public const int MostSegments = 500_000;
    public const int MostRuns = 10_000;
    public const int MostOpenRuns = 2_000;
    public const int MostOutlines = 500;
    public const int MostLetters = 100_000;
    public const double SilentGapMillimeters = 0.1;
    public const double NotedGapMillimeters = 2;
}
