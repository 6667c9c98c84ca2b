namespace Nestmark.Output;

/// <summary>A file to be written.</summary>
/// <param name="Name">File name without a folder.</param>
/// <param name="Bytes">All of it.</param>
public sealed record OutputFile(string Name, ReadOnlyMemory<byte> Bytes);
