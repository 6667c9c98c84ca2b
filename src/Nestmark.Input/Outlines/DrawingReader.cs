namespace Nestmark.Input.Outlines;

/// <summary>Reads drawings of one format.</summary>
/// <param name="Extension">Of its files, as ".svg".</param>
/// <param name="Format">Its name in messages.</param>
/// <param name="LongestFileBytes">Longer files are refused.</param>
/// <param name="Load">From bytes, path, problems and what the job says about it to the drawing, or <c>null</c> after a problem that spoils all of it; never throws for what the file holds.</param>
internal sealed record DrawingReader(
    string Extension, string Format, long LongestFileBytes, Func<ReadOnlyMemory<byte>, string, ProblemList, DrawingSettings, IDrawing?> Load);
