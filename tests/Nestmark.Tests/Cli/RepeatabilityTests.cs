using System.Diagnostics;

namespace Nestmark.Tests.Cli;

public sealed class RepeatabilityTests
{
    private static readonly string[] Files = ["guide.pdf", "marker.pdf", "marker.svg", "report.json"];

    [Fact]
    public void Two_processes_with_the_same_seed_steps_and_threads_write_the_same_bytes()
    {
        string folder = Directory.CreateTempSubdirectory("nestmark-").FullName;
        try
        {
            string[] outs = [Path.Combine(folder, "first"), Path.Combine(folder, "second")];
            Process[] processes = [.. outs.Select(Start)];
            foreach (Process process in processes)
            {
                string error = process.StandardError.ReadToEnd();
                process.WaitForExit();
                Assert.True(process.ExitCode == 0, error);
                process.Dispose();
            }
            Assert.All(Files, file => Assert.Equal(
                File.ReadAllBytes(Path.Combine(outs[0], file)), File.ReadAllBytes(Path.Combine(outs[1], file))));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Process Start(string outFolder)
    {
        ProcessStartInfo start = new("dotnet") { RedirectStandardError = true };
        string[] words =
        [
            Path.Combine(AppContext.BaseDirectory, "nestmark.dll"), "lay", Fixtures.PathOf("harbour-smock/job.yaml"),
            "--out", outFolder, "--steps", "60", "--threads", "2", "--seed", "7", "--quiet",
        ];
        foreach (string word in words)
            start.ArgumentList.Add(word);
        return Process.Start(start)!;
    }
}
