using System.Diagnostics;

namespace Nestmark.Tests.Output;

/// <summary>Runs a PDF tool of the system on a file in memory.</summary>
internal static class Tools
{
    /// <summary>What the tool writes, errors included. It must end with 0.</summary>
    public static string Run(string tool, byte[] pdf, params string[] options)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".pdf");
        File.WriteAllBytes(path, pdf);
        try
        {
            using Process process = Process.Start(new ProcessStartInfo(tool, [.. options, path]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd() + errors.GetAwaiter().GetResult();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"{tool}: {output}");
            return output;
        }
        finally
        {
            File.Delete(path);
        }
    }
}
