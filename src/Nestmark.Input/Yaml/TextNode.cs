namespace Nestmark.Input.Yaml;

/// <summary>A word, a number or a quoted text; numbers keep the user's spelling.</summary>
internal sealed record TextNode(string Text, int Line, int Column) : JobNode(Line, Column);
