using System.Collections.Immutable;

namespace Nestmark.Yardage.Charts;

/// <summary>The cloth that one garment needs, over sizes, widths and nap.</summary>
/// <param name="Job">The job.</param>
/// <param name="Request">What was asked for.</param>
/// <param name="Entries">By cloth, nap, size and width, in the order of the request; cells whose search was stopped are missing.</param>
public sealed record Chart(Job Job, ChartRequest Request, ImmutableArray<ChartEntry> Entries)
{
    /// <summary>Whether no cell is missing.</summary>
    public bool IsComplete => Entries.Length == ChartMaking.Cells(Request).Length;
}
