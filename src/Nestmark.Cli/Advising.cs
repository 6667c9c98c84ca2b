namespace Nestmark.Cli;

/// <summary>Whether ways to save are looked for.</summary>
internal enum Advising
{
    /// <summary>Only the marker.</summary>
    Unasked,

    /// <summary>Ways to save besides; they share the time.</summary>
    Asked,
}
