using System.Collections.Immutable;
using Nestmark.Output;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Cli;

/// <summary>Where charts go to; tests put others in their place.</summary>
/// <param name="FindObstacles">What stands in the way of writing a chart of this job, told before the search.</param>
/// <param name="OpenCells">The cells that earlier runs found.</param>
/// <param name="WriteFiles">Writes the files of a chart.</param>
internal sealed record ChartDoors(
    Func<Job, ChartOptions, ImmutableArray<Problem>> FindObstacles,
    Func<Job, ChartOptions, ChartCellsFile> OpenCells,
    Func<Chart, ChartOptions, WrittenFiles> WriteFiles)
{
    private static readonly string[] Names = ["chart.pdf", "chart.csv", "chart.json", "chart.txt"];

    /// <summary>Files on disk.</summary>
    public static ChartDoors Real { get; } = new(
        (job, options) => OutputStore.Obstacles(options.Folder, Names.Append(ChartCellsFile.Name), JobOrigin.Of(job), options.Replacing),
        (job, options) => ChartCellsFile.Open(options.Folder, JobOrigin.Of(job)),
        Write);

    private static WrittenFiles Write(Chart chart, ChartOptions options)
    {
        OutputFile[] files =
        [
            new(Names[0], ChartPdf.Write(chart)), new(Names[1], ChartCsv.Write(chart)), new(Names[2], ChartJson.Write(chart)), new(Names[3], ChartText.Write(chart)),
        ];
        ImmutableArray<Problem> problems = OutputStore.Write(options.Folder, files, JobOrigin.Of(chart.Job), options.Replacing);
        return new WrittenFiles(options.Folder, problems.IsEmpty ? [.. Names] : [], problems);
    }
}
