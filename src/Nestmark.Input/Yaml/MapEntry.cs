namespace Nestmark.Input.Yaml;

/// <summary>A key and its value.</summary>
internal sealed record MapEntry(TextNode Key, JobNode Value);
