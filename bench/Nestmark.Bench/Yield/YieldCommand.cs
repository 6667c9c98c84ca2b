using System.Diagnostics;
using System.Globalization;
using Nestmark.Bench.Trace;
using Nestmark.Nesting;
using Nestmark.Nesting.Verification;
using Nestmark.Yardage;

namespace Nestmark.Bench.Yield;

/// <summary>Searches instances and prints what they yield.</summary>
internal static class YieldCommand
{
    public static int Run(YieldOptions options, TextWriter output)
    {
        if (!Directory.Exists(options.Data) && !File.Exists(options.Data))
        {
            output.WriteLine($"There is no folder or file {options.Data}.");
            return 1;
        }
        string[] files = File.Exists(options.Data) ? [options.Data] : [.. Directory.GetFiles(options.Data, "*.json").Order(StringComparer.Ordinal)];
        List<string> faults = [];
        List<Instance> instances = [.. files.Select(file => InstanceReading.Read(file, faults)).OfType<Instance>()];
        if (faults.Count > 0)
        {
            faults.ForEach(output.WriteLine);
            return 1;
        }
        if (options.Only.Count > 0)
            instances = [.. instances.Where(instance => options.Only.Contains(instance.Name))];
        if (instances.Count == 0)
        {
            output.WriteLine($"No instance found in {options.Data}.");
            return 1;
        }
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessorCount} cores, {options.Threads} threads, {options.Seconds} s, seeds {options.Seed} to {options.Seed + options.Seeds - 1}"));
        List<YieldRun> runs = [];
        foreach (Instance instance in instances)
        {
            List<YieldRun> ofInstance;
            try
            {
                ofInstance = [.. Enumerable.Range(0, options.Seeds).Select(i => RunOnce(instance, options, options.Seed + i))];
            }
            catch (ArgumentException exception)
            {
                output.WriteLine($"{instance.Name}: cannot be laid: {exception.Message}");
                return 1;
            }
            runs.AddRange(ofInstance);
            output.WriteLine(Summary(instance, ofInstance));
        }
        if (options.Out.Length > 0)
            YieldReport.Write(options.Out, runs);
        if (options.Trace.Length > 0)
            TraceFiles.Write(options.Trace, [.. runs.Select(run => run.Trace)]);
        return 0;
    }

    private static YieldRun RunOnce(Instance instance, YieldOptions options, long seed)
    {
        InstanceTask task = InstanceTask.Of(instance);
        using Process process = Process.GetCurrentProcess();
        TimeSpan cpuBefore = process.TotalProcessorTime;
        ClockStop clock = new(options.Seconds);
        StopRule stop = options.Clock == ClockKind.Wall ? clock : new ProcessorStop(options.Seconds * options.Threads);
        Tracing tracing = new(clock, task.Scale);
        SearchSettings settings = new(seed, options.Threads, stop, tracing.Add, CancellationToken.None);
        Marker marker = MarkerMaking.Make(task.Task, settings, Tuned.Of(options.Tuning));
        double seconds = clock.ElapsedSeconds;
        process.Refresh();
        double cpuSeconds = (process.TotalProcessorTime - cpuBefore).TotalSeconds;
        IReadOnlyList<string> violations = MarkerVerifier.Violations(task.Task, marker);
        if (violations.Count > 0)
            throw new InvalidOperationException($"{instance.Name}: {violations[0]}");
        return new YieldRun(task, seed, marker, seconds, cpuSeconds, tracing.Close(instance, seed, marker.LayLength.Micrometers / task.Scale));
    }

    private static string Summary(Instance instance, List<YieldRun> runs)
    {
        double[] densities = [.. runs.Select(run => run.Density).Order()];
        string text = string.Create(CultureInfo.InvariantCulture,
            $"{instance.Name,-10} median {Quantiles.Of(densities, 0.5):0.0000}  quartiles {Quantiles.Of(densities, 0.25):0.0000}-{Quantiles.Of(densities, 0.75):0.0000}  best {densities[^1]:0.0000}  length {runs.Min(run => run.Length):0.###}  {runs.Average(run => run.Seconds):0.0} s  cpu {runs.Average(run => run.CpuSeconds):0.0} s");
        if (instance.Published.Count > 0)
            text += string.Create(CultureInfo.InvariantCulture, $"  published length {instance.Published.Min(published => published.Length):0.###}");
        return text;
    }
}
