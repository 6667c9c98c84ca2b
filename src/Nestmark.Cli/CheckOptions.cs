using Nestmark.Output;

namespace Nestmark.Cli;

/// <summary>What <c>nestmark check</c> was asked for.</summary>
/// <param name="JobFile">Path of the job file.</param>
/// <param name="Folder">Where the piece sheet goes; <c>null</c> writes none.</param>
/// <param name="Replacing">What happens to files of another origin.</param>
internal sealed record CheckOptions(string JobFile, string? Folder, Replacing Replacing);
