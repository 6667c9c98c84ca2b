using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A line drawn on a piece under alteration.</summary>
internal sealed record PaperLine(string Label, ImmutableArray<Vector> Places);
