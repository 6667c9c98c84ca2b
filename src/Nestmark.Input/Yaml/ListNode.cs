using System.Collections.Immutable;

namespace Nestmark.Input.Yaml;

/// <summary>A list.</summary>
internal sealed record ListNode(ImmutableArray<JobNode> Items, int Line, int Column) : JobNode(Line, Column);
