namespace Nestmark.Output.Drawings;

/// <summary>How a line is broken.</summary>
internal enum LineStyle
{
    Solid,
    Dashed,
    Dotted,
    DashDot,
}
