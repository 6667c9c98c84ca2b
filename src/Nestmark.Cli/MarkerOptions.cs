using System.CommandLine;
using Nestmark.Output;

namespace Nestmark.Cli;

/// <summary>The options of a command that searches for markers and writes them: one block for every such command.</summary>
internal sealed class MarkerOptions
{
    private const double UsualSeconds = 10;

    private readonly Argument<string> _job;
    private readonly Option<string> _folder = CommonOptions.Folder();
    private readonly Option<double?> _seconds;
    private readonly Option<long?> _steps;
    private readonly Option<long?> _seed = CommonOptions.Seed();
    private readonly Option<Paper?> _paper = CommonOptions.PaperOption();
    private readonly Option<bool> _force = CommonOptions.Force();
    private readonly Option<bool> _quiet;

    /// <summary>The block, in the words of one command.</summary>
    public MarkerOptions(string job, string seconds, string steps, string quiet)
    {
        _job = new("JOB") { Description = job };
        _seconds = CommonOptions.Seconds(seconds + " [default: 10]");
        _steps = CommonOptions.Steps(steps);
        _quiet = new("--quiet") { Description = quiet };
    }

    /// <summary>A command with these options and its own; the own ones stand where they belong in the help.</summary>
    /// <param name="name">The verb.</param>
    /// <param name="description">What it does.</param>
    /// <param name="threads">An option about threads; <c>null</c> for a command that uses one.</param>
    /// <param name="own">The command's further options.</param>
    public Command CommandOf(string name, string description, Option<long?>? threads, params Option[] own)
    {
        Command command = new(name, description) { _job, _folder, _seconds, _steps };
        foreach (Option option in ((Option?[])[threads, _seed, _paper, .. own, _force, _quiet]).OfType<Option>())
            command.Add(option);
        CommonOptions.RefuseBoth(command, _seconds, _steps);
        return command;
    }

    /// <summary>What was asked for.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="threads">As given; <c>null</c> takes the machine's cores, at most four.</param>
    public LayOptions Of(ParseResult parsed, long? threads) => new(
        parsed.GetRequiredValue(_job), parsed.GetRequiredValue(_folder),
        CommonOptions.EffortOf(UsualSeconds, parsed.GetValue(_seconds), parsed.GetValue(_steps), threads, parsed.GetValue(_seed)),
        parsed.GetValue(_paper),
        parsed.GetValue(_force) ? Replacing.AnyFile : Replacing.OwnFiles,
        parsed.GetValue(_quiet) ? Talk.Quiet : Talk.Full);
}
