namespace Nestmark.Input.Dxf;

/// <summary>Which rules a file follows.</summary>
internal enum DxfKind
{
    /// <summary>A drawing without rules of its own: closed outlines are pieces.</summary>
    Plain,

    /// <summary>A pattern after ASTM D6673 or ANSI/AAMA-292: pieces are blocks, layers say what a line is.</summary>
    Pattern,
}
