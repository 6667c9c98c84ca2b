using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Where jobs come from and where plans go to; tests put others in their place.</summary>
/// <param name="ReadJob">Reads the job file at a path.</param>
/// <param name="WriteFiles">Writes the files of a plan.</param>
/// <param name="PaperFault">Why a text names no paper; <c>null</c> when it does.</param>
internal sealed record Doors(
    Func<string, JobReading> ReadJob, Func<Plan, LayOptions, WrittenFiles> WriteFiles, Func<string, string?> PaperFault)
{
    /// <summary>Files on disk.</summary>
    public static Doors Real { get; } = new(
        path => throw new NotImplementedException(path),
        (plan, options) => throw new NotImplementedException(plan + options.Folder),
        _ => null);
}
