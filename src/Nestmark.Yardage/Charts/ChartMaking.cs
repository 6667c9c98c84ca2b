using System.Collections.Concurrent;
using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;

namespace Nestmark.Yardage.Charts;

/// <summary>Searches every cell of a chart, one cell a thread.</summary>
public static class ChartMaking
{
    /// <summary>The cells of a chart: by cloth, nap, size and width, in the order of the request.</summary>
    public static ImmutableArray<ChartCell> Cells(ChartRequest request) =>
    [
        .. from cloth in request.Cloths
           from nap in request.Naps
           from size in request.Sizes
           from width in request.Widths
           select new ChartCell(cloth, size, nap, width),
    ];

    /// <summary>Makes the chart.</summary>
    /// <param name="job">The job, without errors.</param>
    /// <param name="request">What to show; cloths and sizes are those of the job.</param>
    /// <param name="known">What an earlier run found for a cell, or <c>null</c>; such a cell is not searched again.</param>
    /// <param name="found">Called with every cell that was searched to its end, one call at a time, from any thread.</param>
    /// <param name="cancellation">Ends the searches; cells that were not searched to their end are left out of the chart.</param>
    /// <remarks>
    /// Without cancellation the same request in steps gives the same chart, whatever the number of threads.
    /// Cell by cell the searches know nothing of each other; <see cref="ChartSharing"/> then lets cells use each other's markers.
    /// </remarks>
    /// <exception cref="ArgumentException">The effort has neither seconds nor steps, or both, or no thread.</exception>
    public static Chart Make(
        Job job, ChartRequest request, Func<ChartCell, ChartFinding?> known, Action<ChartNews> found, CancellationToken cancellation)
    {
        ImmutableArray<ChartCell> cells = Cells(request);
        ConcurrentDictionary<ChartCell, ChartFinding> findings = [];
        foreach (ChartCell cell in cells)
        {
            if (known(cell) is ChartFinding earlier)
                findings[cell] = earlier;
        }
        Lock telling = new();
        Effort ofCell = request.Effort with { Threads = 1 };
        Parallel.ForEach(
            Partitioner.Create(cells.Where(cell => !findings.ContainsKey(cell)).ToArray(), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, request.Effort.Threads) },
            cell =>
            {
                if (cancellation.IsCancellationRequested)
                    return;
                ChartFinding finding = Searched(job, cell, ofCell, cancellation);
                if (cancellation.IsCancellationRequested)
                    return;
                lock (telling)
                {
                    findings[cell] = finding;
                    found(new ChartNews(cell, finding, findings.Count, cells.Length));
                }
            });
        return new Chart(job, request, ChartSharing.Entries(job, cells, findings));
    }

    private static ChartFinding Searched(Job job, ChartCell cell, Effort effort, CancellationToken cancellation)
    {
        Cloth cloth = cell.ClothOf(job);
        if (cloth.UsableWidth <= Geometry.Length.Zero)
            return new ChartFinding(Geometry.Length.Zero, 0, [new Unplaced("cloth", cell.Size, $"Between the selvages of {cloth.Name} nothing is left of this width.")]);
        Marker marker = Planner.Make(cell.JobOf(job), effort, (_, _) => { }, cancellation).Cloths[0].Marker;
        return marker.Unplaced.IsEmpty
            ? new ChartFinding(marker.ClothLength, marker.EfficiencyRatio, [])
            : new ChartFinding(Geometry.Length.Zero, 0, marker.Unplaced);
    }
}
