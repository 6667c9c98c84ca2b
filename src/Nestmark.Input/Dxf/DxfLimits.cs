namespace Nestmark.Input.Dxf;

/// <summary>Bounds on DXF files; references/formats.md 9.</summary>
internal static class DxfLimits
{
    public const long LongestFileBytes = 64L << 20;
    public const int LongestLineBytes = 64 << 10;
    public const int MostTagsInRecord = 1_000_000;
    public const int MostEntities = 300_000;
    public const int MostSegments = 500_000;
    public const int MostOutlinePoints = 200_000;
    public const int MostPieces = 2_000;
    public const int DeepestInsert = 16;
    public const int MostControlPoints = 20_000;
    public const int HighestDegree = 11;
    public const double LargestNumber = 1e9;
    public const double FarthestMillimeters = 1e5;
}
