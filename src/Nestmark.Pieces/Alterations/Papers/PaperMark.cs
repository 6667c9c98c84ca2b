using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A mark on a piece under alteration.</summary>
internal sealed record PaperMark(string Label, Vector Place);
