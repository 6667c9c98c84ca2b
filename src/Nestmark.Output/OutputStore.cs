using System.Collections.Immutable;
using System.Text;
using Nestmark.Output.Store;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>Writes a set of files into a folder, all of them or none. The one place of this project that touches the disk.</summary>
public static class OutputStore
{
    private const string NewEnding = ".nestmark-new";
    private const string OldEnding = ".nestmark-old";

    /// <summary>Writes the files: first all under temporary names, then every one takes its own name.</summary>
    /// <param name="folder">Made when it does not exist, and taken away again when nothing could be written.</param>
    /// <param name="files">Names without a folder, each once.</param>
    /// <param name="origin">The job's tag (<see cref="JobOrigin"/>): a file that holds it is the job's own.</param>
    /// <param name="replacing">Which files may be replaced.</param>
    /// <returns>Nothing when all was written; otherwise everything that stood in the way, and the folder's files are as before.</returns>
    /// <exception cref="ArgumentException">A name has a folder in it, is empty, or comes twice.</exception>
    public static ImmutableArray<Problem> Write(string folder, IReadOnlyList<OutputFile> files, string origin, Replacing replacing)
    {
        if (files.Any(file => file.Name.Length == 0 || Path.GetFileName(file.Name) != file.Name))
            throw new ArgumentException("File names must not be empty or hold a folder.", nameof(files));
        if (files.Select(file => file.Name).Distinct(StringComparer.Ordinal).Count() != files.Count)
            throw new ArgumentException("Each file name must come once.", nameof(files));
        string current = folder;
        string[] made = [];
        try
        {
            ImmutableArray<Problem> problems = Obstacles(folder, files.Select(file => file.Name), origin, replacing);
            if (!problems.IsEmpty)
                return problems;
            made = [.. Missing(folder)];
            Directory.CreateDirectory(folder);
            RemoveLeftovers(folder);
            WriteAll(folder, files, ref current);
            return [];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            RemoveEmpty(made);
            return [StoreProblems.Of(current, fault)];
        }
    }

    /// <summary>What stands in the way of writing files of these names, as far as can be told without writing. Changes nothing.</summary>
    /// <param name="folder">Need not exist.</param>
    /// <param name="names">Names without a folder.</param>
    /// <param name="origin">As for <see cref="Write"/>.</param>
    /// <param name="replacing">Which files may be replaced.</param>
    public static ImmutableArray<Problem> Obstacles(string folder, IEnumerable<string> names, string origin, Replacing replacing)
    {
        try
        {
            return File.Exists(folder)
                ? [StoreProblems.FolderIsFile(folder)]
                : [.. names.SelectMany(name => Obstacles(Path.Combine(folder, name), origin, replacing))];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [StoreProblems.Of(folder, fault)];
        }
    }

    private static IEnumerable<Problem> Obstacles(string path, string origin, Replacing replacing)
    {
        if (Directory.Exists(path))
            yield return StoreProblems.FileIsFolder(path);
        else if (File.Exists(path) && replacing == Replacing.OwnFiles && !IsOwn(path, origin))
            yield return StoreProblems.ForeignFile(path);
    }

    private static bool IsOwn(string path, string origin) =>
        File.ReadAllBytes(path).AsSpan().IndexOf(Encoding.ASCII.GetBytes(origin)) >= 0;

    // The folder and those above it that do not exist, the deepest first.
    private static IEnumerable<string> Missing(string folder)
    {
        for (string? path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)); path is not null && !Directory.Exists(path); path = Path.GetDirectoryName(path))
            yield return path;
    }

    private static void RemoveEmpty(IEnumerable<string> folders)
    {
        try
        {
            foreach (string path in folders.Where(Directory.Exists))
                Directory.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // One that is not empty stays; what stood in the way of writing is told already.
        }
    }

    // An earlier run that was cut off may have left its temporary files.
    private static void RemoveLeftovers(string folder)
    {
        foreach (string ending in (string[])[NewEnding, OldEnding])
            foreach (string path in Directory.GetFiles(folder, ".*" + ending))
                File.Delete(path);
    }

    private static void WriteAll(string folder, IReadOnlyList<OutputFile> files, ref string current)
    {
        List<string> done = [];
        try
        {
            foreach (OutputFile file in files)
            {
                current = Path.Combine(folder, file.Name);
                WriteNew(Temporary(current, NewEnding), file.Bytes.Span);
            }
            foreach (OutputFile file in files)
            {
                current = Path.Combine(folder, file.Name);
                done.Add(current);
                TakeName(current);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            done.ForEach(Undo);
            foreach (OutputFile file in files)
                File.Delete(Temporary(Path.Combine(folder, file.Name), NewEnding));
            throw;
        }
        done.ForEach(path => File.Delete(Temporary(path, OldEnding)));
    }

    private static void WriteNew(string path, ReadOnlySpan<byte> bytes)
    {
        using FileStream stream = new(path, FileMode.Create, FileAccess.Write);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    private static void TakeName(string path)
    {
        if (File.Exists(path))
            File.Replace(Temporary(path, NewEnding), path, Temporary(path, OldEnding));
        else
            File.Move(Temporary(path, NewEnding), path);
    }

    // A file whose turn had not come still has its new name waiting; otherwise the old one returns, or the new one goes.
    private static void Undo(string path)
    {
        if (File.Exists(Temporary(path, OldEnding)))
            File.Move(Temporary(path, OldEnding), path, overwrite: true);
        else if (!File.Exists(Temporary(path, NewEnding)))
            File.Delete(path);
    }

    private static string Temporary(string path, string ending) =>
        Path.Combine(Path.GetDirectoryName(path)!, "." + Path.GetFileName(path) + ending);
}
