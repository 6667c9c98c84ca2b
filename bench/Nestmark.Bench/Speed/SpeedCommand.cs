using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Nestmark.Bench.Speed;

/// <summary>Times the parts of the program.</summary>
internal static class SpeedCommand
{
    /// <summary>Prints a table and leaves it as Markdown in a folder of the temporary directory.</summary>
    public static int Run(string filter)
    {
        Job job = Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance);
        ManualConfig config = ManualConfig.CreateEmpty()
            .AddJob(job)
            .AddLogger(ConsoleLogger.Default)
            .AddColumnProvider(DefaultColumnProviders.Instance)
            .AddDiagnoser(MemoryDiagnoser.Default)
            .AddExporter(MarkdownExporter.GitHub)
            .WithOptions(ConfigOptions.JoinSummary | ConfigOptions.DisableLogFile)
            .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "nestmark-speed"));
        BenchmarkSwitcher.FromAssembly(typeof(SpeedCommand).Assembly).Run(["--filter", filter], config);
        return 0;
    }
}
