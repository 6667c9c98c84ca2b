namespace Nestmark.Input.Svg;

/// <summary>What a shape of a drawing is for.</summary>
internal enum SvgRole
{
    /// <summary>Not said.</summary>
    None,
    Outline,
    Grain,
    Fold,
    Notch,
    Line,
    Mark,
    Corner,
}
