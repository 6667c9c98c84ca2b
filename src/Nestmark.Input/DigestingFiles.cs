using System.Security.Cryptography;
using System.Text;

namespace Nestmark.Input;

/// <summary>Passes files on and remembers what was in them.</summary>
/// <param name="inner">Where the files come from.</param>
internal sealed class DigestingFiles(IFileSource inner) : IFileSource
{
    private readonly SortedDictionary<string, string> _contents = new(StringComparer.Ordinal);

    /// <summary>32 hexadecimal digits made of the names and contents of all files read so far; the order of reading does not matter.</summary>
    public string Digest
    {
        get
        {
            string all = string.Concat(_contents.Select(file => $"{file.Key}\n{file.Value}\n"));
            return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all)).AsSpan(0, 16));
        }
    }

    /// <inheritdoc/>
    public FileContent Read(string path, long longestBytes)
    {
        FileContent content = inner.Read(path, longestBytes);
        _contents[Path.GetFileName(path)] = $"{content.State} {Convert.ToHexStringLower(SHA256.HashData(content.Bytes.Span))}";
        return content;
    }
}
