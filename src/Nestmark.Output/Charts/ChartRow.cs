using System.Collections.Immutable;

namespace Nestmark.Output.Charts;

/// <summary>A row of a chart.</summary>
/// <param name="Size">The size, or words for a job without sizes.</param>
/// <param name="Cells">One a width.</param>
internal sealed record ChartRow(string Size, ImmutableArray<ChartCellText> Cells);
