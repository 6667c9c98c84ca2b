using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>What <c>nestmark lay</c> was asked for.</summary>
/// <param name="JobFile">Path of the job file.</param>
/// <param name="Folder">Where the files go.</param>
/// <param name="Effort">How long and how to search.</param>
/// <param name="Paper">Paper for the full-size marker; <c>null</c> takes the usual one of the job's units.</param>
/// <param name="Replacing">What happens to files of another origin.</param>
/// <param name="Talk">How much to say.</param>
internal sealed record LayOptions(string JobFile, string Folder, Effort Effort, Paper? Paper, Replacing Replacing, Talk Talk)
{
    /// <summary>Whether ways to save are looked for.</summary>
    public Advising Advising { get; init; }

    /// <summary>Whether the job's leftovers are used first.</summary>
    public LeftoverUse Leftovers { get; init; }
}
