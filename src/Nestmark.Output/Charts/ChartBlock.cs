using System.Collections.Immutable;

namespace Nestmark.Output.Charts;

/// <summary>The part of a chart for one cloth and one nap.</summary>
/// <param name="Heading">Cloth, how it is spread, and nap.</param>
/// <param name="Widths">The widths in words.</param>
/// <param name="Rows">One a size.</param>
internal sealed record ChartBlock(string Heading, ImmutableArray<string> Widths, ImmutableArray<ChartRow> Rows);
