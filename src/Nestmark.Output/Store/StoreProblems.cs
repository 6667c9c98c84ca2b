using Nestmark.Yardage;

namespace Nestmark.Output.Store;

/// <summary>What can stand in the way of writing files, in words; the one file of them.</summary>
internal static class StoreProblems
{
    private const int LinuxDiskFull = 28; // ENOSPC
    private const int LinuxQuotaFull = 122; // EDQUOT
    private const int WindowsDiskFull = unchecked((int)0x80070070); // ERROR_DISK_FULL

    /// <summary>The folder's name belongs to a file.</summary>
    public static Problem FolderIsFile(string folder) =>
        Error(folder, "This should be a folder, but it is a file.", "Choose another folder, or move the file away.");

    /// <summary>The file's name belongs to a folder.</summary>
    public static Problem FileIsFolder(string path) =>
        Error(path, "This should be a file, but it is a folder.", "Choose another folder to write to, or move this one away.");

    /// <summary>The file was not written by this job.</summary>
    public static Problem ForeignFile(string path) => Error(
        path, "A file of this name exists and does not come from this job.",
        "Choose another folder, or allow replacing any file (on the command line: --force).");

    /// <summary>The system refused.</summary>
    public static Problem Of(string path, Exception fault) => fault switch
    {
        UnauthorizedAccessException => Error(path, "There is no permission to write here.", "Choose a folder of your own."),
        { HResult: LinuxDiskFull or LinuxQuotaFull or WindowsDiskFull } =>
            Error(path, "The disk is full.", "Make room and run again; the files that were there are unchanged."),
        _ => Error(path, "It could not be written: " + fault.Message, "The files that were there are unchanged."),
    };

    private static Problem Error(string path, string what, string hint) =>
        new(Severity.Error, new Place(path, 0, 0, ""), what, hint);
}
