namespace Nestmark.Input.Svg;

/// <summary>Whether a run of segments comes back to its start.</summary>
internal enum SubPathForm
{
    Open,
    Closed,
}
