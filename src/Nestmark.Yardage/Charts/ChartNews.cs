namespace Nestmark.Yardage.Charts;

/// <summary>A cell of a chart has been found.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Finding">What was found for it.</param>
/// <param name="Done">How many cells are done, known ones included.</param>
/// <param name="All">How many there are.</param>
public sealed record ChartNews(ChartCell Cell, ChartFinding Finding, int Done, int All);
