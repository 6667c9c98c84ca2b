using System.Collections.Immutable;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>The pieces of a job as files for other programs.</summary>
internal static class PieceFiles
{
    /// <summary>The formats that <c>--format</c> knows.</summary>
    public static ImmutableArray<string> Formats { get; } = ["svg", "dxf"];

    /// <summary>Writes "pieces.svg" and the like, all or none.</summary>
    public static WrittenFiles Write(Job job, CheckOptions options)
    {
        OutputFile[] files = [.. options.Formats.Select(format => new OutputFile("pieces." + format, format == "svg" ? PiecesSvg.Write(job) : PiecesDxf.Write(job)))];
        ImmutableArray<Problem> problems = OutputStore.Write(options.Folder!, files, JobOrigin.Of(job), options.Replacing);
        return new WrittenFiles(options.Folder!, problems.IsEmpty ? [.. files.Select(file => file.Name)] : [], problems);
    }
}
