using System.Collections.Immutable;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>A job file as read.</summary>
/// <param name="Job">The job; <c>null</c> exactly when a problem is an error.</param>
/// <param name="Problems">Every problem and note, by file and line.</param>
/// <param name="FilesRead">The files that were read, the job file first.</param>
public sealed record JobReading(Job? Job, ImmutableArray<Problem> Problems, ImmutableArray<string> FilesRead)
{
    /// <summary>32 hexadecimal digits made of the job file and its drawings: the same digits, the same job.</summary>
    public string Digest { get; init; } = "";
}
