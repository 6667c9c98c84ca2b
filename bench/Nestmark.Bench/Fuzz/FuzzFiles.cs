using Nestmark.Input;

namespace Nestmark.Bench.Fuzz;

/// <summary>The files of a starting point, one of them changed.</summary>
internal sealed class FuzzFiles(FuzzSeed seed, byte[] changed) : IFileSource
{
    /// <inheritdoc/>
    public FileContent Read(string path, long longestBytes)
    {
        string known = path.Replace('\\', '/');
        if (known == seed.Target.Replace('\\', '/'))
            return Content(changed, longestBytes);
        return seed.Files.TryGetValue(path, out byte[]? bytes) ? Content(bytes, longestBytes) : new FileContent(FileState.Missing, default);
    }

    private static FileContent Content(byte[] bytes, long longestBytes) =>
        bytes.Length > longestBytes ? new FileContent(FileState.TooLarge, default) : new FileContent(FileState.Found, bytes);
}
