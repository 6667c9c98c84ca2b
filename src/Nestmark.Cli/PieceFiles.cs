using System.Collections.Immutable;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>The pieces of a job: the sheet that shows them, and files for other programs.</summary>
internal static class PieceFiles
{
    /// <summary>The formats that <c>--format</c> knows.</summary>
    public static ImmutableArray<string> Formats { get; } = ["pdf", "svg", "dxf"];

    /// <summary>Writes "pieces.pdf" and the like, all or none.</summary>
    /// <param name="job">The job.</param>
    /// <param name="noticed">What was noticed in reading it; stands on the sheet.</param>
    /// <param name="options">Where to, and which.</param>
    public static WrittenFiles Write(Job job, ImmutableArray<Problem> noticed, CheckOptions options)
    {
        OutputFile[] files = [.. options.Formats.Select(format => new OutputFile("pieces." + format, BytesOf(format, job, noticed)))];
        ImmutableArray<Problem> problems = OutputStore.Write(options.Folder!, files, JobOrigin.Of(job), options.Replacing);
        return new WrittenFiles(options.Folder!, problems.IsEmpty ? [.. files.Select(file => file.Name)] : [], problems);
    }

    private static byte[] BytesOf(string format, Job job, ImmutableArray<Problem> noticed) => format switch
    {
        "pdf" => PiecesPdf.Write(job, noticed),
        "svg" => PiecesSvg.Write(job),
        _ => PiecesDxf.Write(job),
    };
}
