using System.Collections.Immutable;
using Nestmark.Output;

namespace Nestmark.Cli;

/// <summary>What <c>nestmark check</c> was asked for.</summary>
/// <param name="File">Path of the job file, or of a drawing.</param>
/// <param name="Folder">Where the pieces are written; <c>null</c> writes nothing.</param>
/// <param name="Formats">In which formats: "svg", "dxf".</param>
/// <param name="Replacing">What happens to files of another origin.</param>
internal sealed record CheckOptions(string File, string? Folder, ImmutableArray<string> Formats, Replacing Replacing);
