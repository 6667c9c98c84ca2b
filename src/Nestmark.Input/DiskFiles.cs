namespace Nestmark.Input;

/// <summary>Files on disk.</summary>
public sealed class DiskFiles : IFileSource
{
    /// <inheritdoc/>
    public FileContent Read(string path, long longestBytes)
    {
        try
        {
            FileInfo file = new(path);
            if (!file.Exists)
                return new FileContent(Directory.Exists(path) ? FileState.Unreadable : FileState.Missing, default);
            return file.Length > longestBytes
                ? new FileContent(FileState.TooLarge, default)
                : new FileContent(FileState.Found, File.ReadAllBytes(path));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException)
        {
            return new FileContent(FileState.Unreadable, default);
        }
    }
}
