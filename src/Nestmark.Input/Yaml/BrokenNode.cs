namespace Nestmark.Input.Yaml;

/// <summary>Something that was already reported; readers pass over it in silence.</summary>
internal sealed record BrokenNode(int Line, int Column) : JobNode(Line, Column);
