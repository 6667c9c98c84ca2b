using System.Runtime.CompilerServices;

namespace Nestmark.Tests;

/// <summary>Compares an output with the one that was read and accepted; <c>UPDATE_SNAPSHOTS=1</c> accepts new ones.</summary>
internal static class Approve
{
    /// <summary>Fails unless the text equals the accepted one, line ends aside.</summary>
    public static void Text(string name, string text)
    {
        string path = Path.Combine(Path.GetDirectoryName(ThisFile())!, "Snapshots", name);
        string actual = text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
        }
        Assert.True(File.Exists(path), $"No snapshot {name}: run the tests with UPDATE_SNAPSHOTS=1 and read it.");
        Assert.Equal(File.ReadAllText(path), actual);
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
