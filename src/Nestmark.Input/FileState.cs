namespace Nestmark.Input;

/// <summary>Whether a file could be read.</summary>
public enum FileState
{
    /// <summary>Read; the bytes are there.</summary>
    Found,

    /// <summary>No file of that name.</summary>
    Missing,

    /// <summary>Longer than the reader takes.</summary>
    TooLarge,

    /// <summary>There, but it may not be read, or is a folder.</summary>
    Unreadable,
}
