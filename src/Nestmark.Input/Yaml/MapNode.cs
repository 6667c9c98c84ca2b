using System.Collections.Immutable;

namespace Nestmark.Input.Yaml;

/// <summary>Keys and values in the order of the file; no key twice.</summary>
internal sealed record MapNode(ImmutableArray<MapEntry> Entries, int Line, int Column) : JobNode(Line, Column);
