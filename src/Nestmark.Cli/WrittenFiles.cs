using System.Collections.Immutable;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>What came of writing a plan's files: all of them, or none and why.</summary>
/// <param name="Folder">The folder as the user named it.</param>
/// <param name="Names">Names of the files written.</param>
/// <param name="Problems">Why none were.</param>
internal sealed record WrittenFiles(string Folder, ImmutableArray<string> Names, ImmutableArray<Problem> Problems);
