namespace Nestmark.Cli;

/// <summary>How much a command says.</summary>
internal enum Talk
{
    /// <summary>Progress and a summary.</summary>
    Full,

    /// <summary>Only what to buy and what is wrong.</summary>
    Quiet,
}
