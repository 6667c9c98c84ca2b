using Nestmark.Input.Dxf;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Outlines;

/// <summary>The formats that drawings are read from, by extension.</summary>
internal static class DrawingReaders
{
    /// <summary>Every format, in the order in which messages name them.</summary>
    public static IReadOnlyList<DrawingReader> All { get; } =
    [
        new(".svg", "SVG", SvgLimits.LongestFileBytes, (bytes, path, problems) => SvgDrawing.Load(bytes, new SvgProblems(path, problems))),
        new(".dxf", "DXF", DxfLimits.LongestFileBytes, (bytes, path, problems) => DxfDrawing.Load(bytes, new DxfProblems(path, problems))),
    ];

    /// <summary>The reader for a file by its extension, or <c>null</c>.</summary>
    public static DrawingReader? For(string file) =>
        All.FirstOrDefault(reader => file.EndsWith(reader.Extension, StringComparison.OrdinalIgnoreCase));
}
