namespace Nestmark.Cli;

/// <summary>Where a command writes.</summary>
/// <param name="Out">Results and progress.</param>
/// <param name="Error">What is wrong with the command line or the job.</param>
/// <param name="Kind">What <paramref name="Out"/> leads to.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error, TerminalKind Kind);
