using System.Text;
using Nestmark.Input;

namespace Nestmark.Tests.Input;

/// <summary>Files that live in the test's memory.</summary>
internal sealed class MemoryFiles : IFileSource
{
    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    public MemoryFiles With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    public MemoryFiles With(string path, byte[] bytes)
    {
        _files[path] = bytes;
        return this;
    }

    public FileContent Read(string path, long longestBytes)
    {
        if (!_files.TryGetValue(path, out byte[]? bytes))
            return new FileContent(FileState.Missing, default);
        return bytes.Length > longestBytes ? new FileContent(FileState.TooLarge, default) : new FileContent(FileState.Found, bytes);
    }
}
