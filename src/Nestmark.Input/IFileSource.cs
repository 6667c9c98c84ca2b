namespace Nestmark.Input;

/// <summary>Where the readers get files from: the disk, or a test's memory.</summary>
public interface IFileSource
{
    /// <summary>The content of a file; never throws for what the user named.</summary>
    /// <param name="path">As the job names it, joined to the job file's folder.</param>
    /// <param name="longestBytes">A longer file is <see cref="FileState.TooLarge"/>.</param>
    FileContent Read(string path, long longestBytes);
}
