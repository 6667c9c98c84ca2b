namespace Nestmark.Input.Pdf;

/// <summary>A side of a page.</summary>
internal enum TileSide
{
    Left,
    Right,
    Bottom,
    Top,
}
