namespace Nestmark.Cli;

/// <summary>What happens to files in the way that did not come from the same job.</summary>
internal enum Replacing
{
    /// <summary>They stay, and nothing is written.</summary>
    OwnOnly,

    /// <summary>They are replaced.</summary>
    Anything,
}
