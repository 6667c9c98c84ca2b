namespace Nestmark.Output.Patterns;

/// <summary>Whether a polyline comes back to its start.</summary>
internal enum DxfEnds
{
    Open,
    Closed,
}
