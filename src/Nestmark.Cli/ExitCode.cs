namespace Nestmark.Cli;

/// <summary>How a run ended, for the shell.</summary>
internal enum ExitCode
{
    /// <summary>Planned, or nothing wrong.</summary>
    Planned = 0,

    /// <summary>Problems in the job, unplaced pieces, or files that could not be written.</summary>
    Problems = 1,

    /// <summary>A wrong command line.</summary>
    WrongCommandLine = 2,
}
