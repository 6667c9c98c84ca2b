using Nestmark.Input.Dxf;
using Nestmark.Input.Pdf;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Outlines;

/// <summary>The formats that drawings are read from, by extension.</summary>
internal static class DrawingReaders
{
    /// <summary>Every format, in the order in which messages name them.</summary>
    public static IReadOnlyList<DrawingReader> All { get; } =
    [
        new(".svg", "SVG", SvgLimits.LongestFileBytes, (bytes, path, problems, settings) => SvgDrawing.Load(bytes, new SvgProblems(path, problems), settings)),
        new(".dxf", "DXF", DxfLimits.LongestFileBytes, (bytes, path, problems, settings) => DxfDrawing.Load(bytes, new DxfProblems(path, problems), settings)),
        new(".pdf", "PDF", PdfLimits.LongestFileBytes, PdfDrawing.Load),
    ];

    /// <summary>The reader for a file by its extension, or <c>null</c>.</summary>
    public static DrawingReader? For(string file) =>
        All.FirstOrDefault(reader => file.EndsWith(reader.Extension, StringComparison.OrdinalIgnoreCase));
}
