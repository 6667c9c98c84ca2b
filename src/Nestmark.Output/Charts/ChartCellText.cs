namespace Nestmark.Output.Charts;

/// <summary>What stands in a cell of a chart.</summary>
/// <param name="Meters">"1.70"; what cannot be cut, in short; or a dash.</param>
/// <param name="Yards">"1 7/8"; the number of the footnote; or a dash.</param>
internal sealed record ChartCellText(string Meters, string Yards);
