namespace Nestmark.Input;

/// <summary>The content of a file.</summary>
/// <param name="State">Whether it could be read.</param>
/// <param name="Bytes">Its bytes; empty unless found.</param>
public sealed record FileContent(FileState State, ReadOnlyMemory<byte> Bytes);
