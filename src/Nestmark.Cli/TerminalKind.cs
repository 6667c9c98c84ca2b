namespace Nestmark.Cli;

/// <summary>What the output leads to.</summary>
internal enum TerminalKind
{
    /// <summary>A file or another program: whole lines only.</summary>
    Plain,

    /// <summary>A screen on which a line can be written over.</summary>
    Interactive,
}
