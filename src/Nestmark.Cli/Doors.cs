using System.Collections.Immutable;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Where jobs come from and where plans go to; tests put others in their place.</summary>
/// <param name="ReadJob">Reads the job file at a path.</param>
/// <param name="FindObstacles">What stands in the way of writing a plan of this job, told before the search.</param>
/// <param name="WriteFiles">Writes the files of a plan.</param>
internal sealed record Doors(
    Func<string, JobReading> ReadJob, Func<Job, LayOptions, ImmutableArray<Problem>> FindObstacles, Func<Plan, LayOptions, WrittenFiles> WriteFiles)
{
    /// <summary>Lists the pieces of the drawing at a path.</summary>
    public Func<string, DrawingReading> ReadDrawing { get; init; } = path => DrawingListing.Read(path, new DiskFiles());

    /// <summary>Where charts go to.</summary>
    public ChartDoors Chart { get; init; } = ChartDoors.Real;

    /// <summary>Files on disk.</summary>
    public static Doors Real { get; } = new(
        path => JobReader.Read(path, new DiskFiles()),
        (job, options) => OutputStore.Obstacles(options.Folder, Names, JobOrigin.Of(job), options.Replacing),
        Write);

    /// <summary>Writes the pieces of a job with what was noticed in reading it; files on disk unless said otherwise.</summary>
    public Func<Job, ImmutableArray<Problem>, CheckOptions, WrittenFiles> WritePieces { get; init; } = PieceFiles.Write;

    private static string[] Names => ["guide.pdf", "marker.pdf", "marker.svg", "report.json"];

    private static WrittenFiles Write(Plan plan, LayOptions options)
    {
        Paper paper = options.Paper ?? (plan.Job.System == MeasureSystem.Imperial ? Paper.Letter : Paper.A4);
        OutputFile[] files =
        [
            new(Names[0], GuidePdf.Write(plan)),
            new(Names[1], MarkerPdf.Write(plan, paper)),
            new(Names[2], MarkerSvg.Write(plan)),
            new(Names[3], ReportJson.Write(plan)),
        ];
        ImmutableArray<Problem> problems = OutputStore.Write(options.Folder, files, JobOrigin.Of(plan.Job), options.Replacing);
        return new WrittenFiles(options.Folder, problems.IsEmpty ? [.. files.Select(file => file.Name)] : [], problems);
    }
}
