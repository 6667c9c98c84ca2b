using System.Collections.Immutable;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>What came of reading a job file.</summary>
/// <param name="Job">The job, or <c>null</c> when it could not be read.</param>
/// <param name="Problems">Everything found, in the order of the file.</param>
internal sealed record JobReading(Job? Job, ImmutableArray<Problem> Problems)
{
    /// <summary>Whether something must be mended before planning.</summary>
    public bool HasErrors => Problems.Any(problem => problem.Severity == Severity.Error);
}
