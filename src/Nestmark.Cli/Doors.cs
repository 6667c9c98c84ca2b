using System.Collections.Immutable;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Where jobs come from and where plans go to; tests put others in their place.</summary>
/// <param name="ReadJob">Reads the job file at a path.</param>
/// <param name="WriteFiles">Writes the files of a plan.</param>
internal sealed record Doors(Func<string, JobReading> ReadJob, Func<Plan, LayOptions, WrittenFiles> WriteFiles)
{
    /// <summary>Files on disk.</summary>
    public static Doors Real { get; } = new(path => JobReader.Read(path, new DiskFiles()), Write);

    private static WrittenFiles Write(Plan plan, LayOptions options)
    {
        Paper paper = options.Paper ?? (plan.Job.System == MeasureSystem.Imperial ? Paper.Letter : Paper.A4);
        OutputFile[] files =
        [
            new("guide.pdf", GuidePdf.Write(plan)),
            new("marker.pdf", MarkerPdf.Write(plan, paper)),
            new("marker.svg", MarkerSvg.Write(plan)),
            new("report.json", ReportJson.Write(plan)),
        ];
        ImmutableArray<Problem> problems = OutputStore.Write(options.Folder, files, JobOrigin.Of(plan.Job), options.Replacing);
        return new WrittenFiles(options.Folder, problems.IsEmpty ? [.. files.Select(file => file.Name)] : [], problems);
    }
}
