namespace Nestmark.Cli;

/// <summary>Whether a lay uses the leftovers that the job lists.</summary>
internal enum LeftoverUse
{
    /// <summary>Everything is bought.</summary>
    None,

    /// <summary>What comes out of the leftovers is cut from them, and only the rest is bought.</summary>
    First,
}
