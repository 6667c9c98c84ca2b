namespace Nestmark.Pieces.Alterations;

/// <summary>A line drawn on the piece, from its first to its last point.</summary>
/// <param name="Label">The line's text.</param>
public sealed record DrawnLine(string Label) : AlterLine;
