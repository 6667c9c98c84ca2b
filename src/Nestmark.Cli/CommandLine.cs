using System.CommandLine;
using System.CommandLine.Help;

namespace Nestmark.Cli;

/// <summary>Reads the command line and runs the command it names.</summary>
internal static class CommandLine
{
    /// <summary>Runs to the end and returns the process's exit code.</summary>
    /// <param name="args">As given by the shell.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="doors">Where jobs come from and files go to.</param>
    /// <param name="stop">Ends a search early; what is found by then is kept.</param>
    public static int Run(string[] args, Terminal terminal, Doors doors, CancellationToken stop)
    {
        RootCommand root = new("Plans how a garment is cut out of cloth: how much to buy, where each piece lies, and the full-size marker to print.")
        {
            LayCommand.Make(terminal, doors, stop),
            CheckCommand.Make(terminal, doors),
            ChartCommand.Make(terminal, doors, stop),
            FitCommand.Make(terminal, doors, stop),
        };
        root.Options.OfType<HelpOption>().Single().Action = new HelpAction { MaxWidth = 100 };
        ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        string[] faults = [.. parsed.Errors.Select(error => error.Message)];
        if (faults.Length == 0)
            return parsed.Invoke(new InvocationConfiguration { Output = terminal.Out, Error = terminal.Error, ProcessTerminationTimeout = null });
        foreach (string fault in faults)
            terminal.Error.WriteLine(fault);
        terminal.Error.WriteLine(Usage(parsed.CommandResult.Command.Name));
        return (int)ExitCodes.Of(faults, [], null);
    }

    private static string Usage(string command) => command switch
    {
        LayCommand.Name => "Usage: nestmark lay JOB [--out DIR] [--seconds N | --steps N] [--threads N] [--seed N] [--paper P] [--advise | --leftovers] [--force] [--quiet]",
        CheckCommand.Name => "Usage: nestmark check JOB|DRAWING [--out DIR] [--format pdf,svg,dxf] [--force]",
        ChartCommand.Name => "Usage: nestmark chart JOB [--widths LIST] [--nap WORD] [--sizes LIST] [--cloth NAME] [--out DIR] [--seconds N | --steps N] [--threads N] [--seed N] [--force] [--quiet]",
        FitCommand.Name => "Usage: nestmark fit JOB [--out DIR] [--seconds N | --steps N] [--seed N] [--paper P] [--force] [--quiet]",
        _ => "Usage: nestmark lay|check|chart|fit JOB [options]; nestmark --help explains them.",
    };
}
