using System.CommandLine;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Options that several commands share, each spelled and explained in one place.</summary>
internal static class CommonOptions
{
    private const int MostThreadsUnasked = 4;

    /// <summary><c>--out DIR</c>; an empty name is refused.</summary>
    public static Option<string> Folder()
    {
        Option<string> folder = new("--out") { Description = "Folder for the files.", HelpName = "DIR", DefaultValueFactory = _ => "out" };
        folder.Validators.Add(result =>
        {
            if (string.IsNullOrWhiteSpace(result.GetValueOrDefault<string>()))
                result.AddError("--out takes the name of a folder, and it is empty.");
        });
        return folder;
    }

    /// <summary><c>--seconds N</c>.</summary>
    public static Option<double?> Seconds(string description) => NumberOptions.Decimal("--seconds", 0, 86_400, description);

    /// <summary><c>--steps N</c>.</summary>
    public static Option<long?> Steps(string description) => NumberOptions.Whole("--steps", 0, 1_000_000_000_000, description);

    /// <summary><c>--threads N</c>.</summary>
    public static Option<long?> Threads(string description) => NumberOptions.Whole("--threads", 1, 64, description);

    /// <summary><c>--seed N</c>.</summary>
    public static Option<long?> Seed() => NumberOptions.Whole("--seed", long.MinValue, long.MaxValue, "Another seed is another try. [default: 1]");

    /// <summary><c>--force</c>.</summary>
    public static Option<bool> Force() => new("--force") { Description = "Replace files in the folder that did not come from this job." };

    /// <summary>Refuses seconds beside steps.</summary>
    public static void RefuseBoth(Command command, Option<double?> seconds, Option<long?> steps) => command.Validators.Add(result =>
    {
        if (result.GetResult(seconds) is not null && result.GetResult(steps) is not null)
            result.AddError("--seconds and --steps exclude each other: give one of them.");
    });

    /// <summary>The effort that some options ask for.</summary>
    /// <param name="usualSeconds">Without seconds and steps.</param>
    /// <param name="seconds">As given.</param>
    /// <param name="steps">As given.</param>
    /// <param name="threads">As given; else the machine's cores, at most four.</param>
    /// <param name="seed">As given; else 1.</param>
    public static Effort EffortOf(double usualSeconds, double? seconds, long? steps, long? threads, long? seed) => new(
        steps is null ? seconds ?? usualSeconds : null,
        steps,
        (int)(threads ?? Math.Min(Environment.ProcessorCount, MostThreadsUnasked)),
        seed ?? 1);

    /// <summary><c>--paper P</c>.</summary>
    public static Option<Paper?> PaperOption() => new("--paper")
    {
        Description = "Paper for the full-size marker: a4, letter, a3, a0, or a roll as roll:914mm. [default: a4, or letter for jobs in inches]",
        HelpName = "P",
        CustomParser = result =>
        {
            PaperReading reading = Paper.Read(result.Tokens[0].Value);
            if (reading.Paper is null)
                result.AddError(reading.Message);
            return reading.Paper;
        },
    };
}
