using System.Runtime.InteropServices;
using Nestmark.Cli;

// The first Ctrl-C (or SIGTERM) ends the search and lets the program finish; a second one ends the program.
using CancellationTokenSource stop = new();
using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, StopOnce);
using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, StopOnce);
Terminal terminal = new(Console.Out, Console.Error, Console.IsOutputRedirected ? TerminalKind.Plain : TerminalKind.Interactive);
return CommandLine.Run(args, terminal, Doors.Real, stop.Token);

void StopOnce(PosixSignalContext context)
{
    context.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
}
