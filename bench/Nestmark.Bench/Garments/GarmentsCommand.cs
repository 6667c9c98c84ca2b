using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace Nestmark.Bench.Garments;

/// <summary>Measures garments against the limits of issue 3, each run in a process of its own, so that every one starts cold and memory is its own.</summary>
internal static class GarmentsCommand
{
    /// <summary>What can be measured alone.</summary>
    public static IReadOnlyList<string> Parts { get; } = ["first", "length", "cost", "slowdown", "threads"];

    /// <summary>Prints the figures of one run as JSON.</summary>
    public static int RunOne(GarmentOptions options, TextWriter output)
    {
        if (Unknown([options.Case], [.. GarmentCase.All.Select(one => one.Name)], output))
            return 2;
        output.WriteLine(JsonSerializer.Serialize(GarmentRun.Of(options)));
        return 0;
    }

    /// <summary>Prints tables of all parts, or of some of them.</summary>
    /// <param name="options">Seconds of the long runs, threads and seed.</param>
    /// <param name="parts">Names of <see cref="Parts"/>; empty for all.</param>
    /// <param name="cases">Names of cases; empty for those that each part is held to.</param>
    /// <param name="output">Where the tables go.</param>
    public static int RunAll(GarmentOptions options, IReadOnlyList<string> parts, IReadOnlyList<string> cases, TextWriter output)
    {
        if (Unknown(parts, Parts, output) || Unknown(cases, [.. GarmentCase.All.Select(one => one.Name)], output))
            return 2;
        if (options.Seconds <= 0 || options.Threads < 1)
        {
            output.WriteLine("Seconds must be more than 0, threads 1 or more.");
            return 2;
        }
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessorCount} cores, {options.Threads} threads, seed {options.Seed}, runs of {options.Seconds} s"));
        foreach (string part in Parts.Where(part => parts.Count == 0 || parts.Contains(part)))
            Measure(part, options, cases, output);
        return 0;
    }

    private static void Measure(string part, GarmentOptions options, IReadOnlyList<string> cases, TextWriter output)
    {
        GarmentOptions rate = options with { Kind = GarmentRunKind.Rate };
        switch (part)
        {
            case "first":
                First(options, Chosen(cases, "folded-25", "open-25", "open-41", "folded-150", "open-150", "open-300"), output);
                break;
            case "length":
                Lengths(options, Chosen(cases, "folded-25", "open-25", "open-150", "open-300"), output);
                break;
            case "cost":
                Cost(rate, Chosen(cases, "open-25", "open-150", "open-300"), output);
                break;
            case "slowdown":
                Slowdown(rate, Chosen(cases, "folded-25", "open-25"), output);
                break;
            default:
                Threads(rate, Chosen(cases, "open-25", "open-150"), output);
                break;
        }
    }

    private static void First(GarmentOptions options, IReadOnlyList<string> cases, TextWriter output)
    {
        Head(output, "first verified marker", "pieces", "limit, s", "cold, s", "warm, s", "warm within the limit", "length, m");
        foreach (string name in cases)
        {
            GarmentFigures found = Run(options with { Case = name, Kind = GarmentRunKind.First });
            double? limit = found.Pieces <= 50 ? 0.3 : found.Pieces <= 150 ? 2 : null;
            Row(output, $"{name} | {found.Pieces} | {limit} | {found.ColdSeconds:0.000} | {found.WarmSeconds:0.000} | {Verdict(limit is { } most ? found.WarmSeconds <= most : null)} | {found.FirstLengthMillimeters / 1000:0.000}");
        }
    }

    private static void Lengths(GarmentOptions options, IReadOnlyList<string> cases, TextWriter output)
    {
        double shortSeconds = options.Seconds / 12;
        Head(output, "length and memory", "first, m", Invariant($"after {shortSeconds:0.##} s, m"), Invariant($"after {options.Seconds:0.##} s, m"), "efficiency", "short above long (limit 1 %, 25 pieces)",
            "long below first", "heap, MB", "process, MB (limit 500)", "seconds, short and long", "cores had");
        foreach (string name in cases)
        {
            List<double> parts = [];
            for (int i = 0; i < options.Seeds; i++)
            {
                GarmentOptions run = options with { Case = name, Kind = GarmentRunKind.Search, Seed = options.Seed + i };
                GarmentFigures brief = Run(run with { Seconds = shortSeconds });
                GarmentFigures full = Run(run);
                double above = 100 * (brief.LengthMillimeters / full.LengthMillimeters - 1);
                double below = 100 * (1 - full.LengthMillimeters / full.FirstLengthMillimeters);
                parts.Add(above);
                Row(output, $"{name}, seed {run.Seed} | {full.FirstLengthMillimeters / 1000:0.000} | {brief.LengthMillimeters / 1000:0.000} | {full.LengthMillimeters / 1000:0.000} | {full.EfficiencyRatio:0.0000} | {above:0.00} % | {below:0.00} % | {full.PeakHeapMegabytes:0} | {full.PeakProcessMegabytes:0} | {brief.Seconds:0.0}, {full.Seconds:0.0} | {full.Cores:0.00}");
            }
            if (parts.Count > 1)
                Row(output, $"{name}, median | | | | | {Quantiles.Of([.. parts.Order()], 0.5):0.00} % | | | | |");
        }
    }

    private static void Cost(GarmentOptions rate, IReadOnlyList<string> cases, TextWriter output)
    {
        Head(output, "cost, processor time", "pieces", "µs a move", "ns a place", "places a move", "places a second", "the same from the first lay on", "others within reach anywhere", "where it lies", "along a line", "cores had");
        List<(string Name, GarmentFigures Figures)> found = [];
        for (int i = 0; i < rate.Seeds; i++)
        {
            GarmentOptions round = rate with { Seed = rate.Seed + i };
            foreach (string name in cases)
            {
                GarmentFigures figures = Run(round with { Case = name });
                found.Add((name, figures));
                Row(output, $"{name}, seed {round.Seed} | {figures.Pieces} | {figures.MoveMicroseconds:0.0} | {figures.PlaceNanoseconds:0} | {figures.PlacesPerMove:0} | {figures.PlacesPerSecond:0} | {figures.WholePlacesPerSecond:0} | {figures.Reach.AnywhereCount:0.0} | {figures.Reach.HereCount:0.0} | {figures.Reach.LineCount:0.0} | {figures.Cores:0.00}");
            }
        }
        if (rate.Seeds > 1)
        {
            foreach (IGrouping<string, GarmentFigures> one in found.GroupBy(run => run.Name, run => run.Figures))
                Row(output, $"{one.Key}, median | {one.First().Pieces} | {Median(one, run => run.MoveMicroseconds):0.0} | {Median(one, run => run.PlaceNanoseconds):0} | {Median(one, run => run.PlacesPerMove):0} | | | {Median(one, run => run.Reach.AnywhereCount):0.0} | {Median(one, run => run.Reach.HereCount):0.0} | {Median(one, run => run.Reach.LineCount):0.0} |");
        }
    }

    private static void Slowdown(GarmentOptions rate, IReadOnlyList<string> cases, TextWriter output)
    {
        Head(output, "slow-down", "gap, mm", "tilt, degrees", "places a processor second", "of those without (limit 0.667)", "places a second from the first lay on", "of those without", "cores had");
        foreach (string name in cases)
        {
            GarmentFigures plain = Run(rate with { Case = name });
            foreach ((double gap, double tilt) in ((double, double)[])[(0, 0), (3, 0), (0, 2)])
            {
                GarmentFigures found = gap + tilt == 0 ? plain : Run(rate with { Case = name, GapMillimeters = gap, TiltDegrees = tilt });
                Row(output, $"{name} | {gap} | {tilt} | {found.PlacesPerProcessorSecond:0} | {found.PlacesPerProcessorSecond / plain.PlacesPerProcessorSecond:0.000} | {found.WholePlacesPerSecond:0} | {found.WholePlacesPerSecond / plain.WholePlacesPerSecond:0.000} | {found.Cores:0.00}");
            }
        }
    }

    private static void Threads(GarmentOptions rate, IReadOnlyList<string> cases, TextWriter output)
    {
        Head(output, "threads", "places a second, 1 thread", "2 threads", "ratio (limit 1.6)", "cores had, 1 thread", "2 threads");
        foreach (string name in cases)
        {
            GarmentFigures one = Run(rate with { Case = name, Threads = 1 });
            GarmentFigures two = Run(rate with { Case = name, Threads = 2 });
            Row(output, $"{name} | {one.PlacesPerSecond:0} | {two.PlacesPerSecond:0} | {two.PlacesPerSecond / one.PlacesPerSecond:0.00} | {one.Cores:0.00} | {two.Cores:0.00}");
        }
    }

    private static double Median(IEnumerable<GarmentFigures> runs, Func<GarmentFigures, double> figure) => Quantiles.Of([.. runs.Select(figure).Order()], 0.5);

    private static GarmentFigures Run(GarmentOptions options)
    {
        ProcessStartInfo start = new(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet")
            start.ArgumentList.Add(typeof(GarmentsCommand).Assembly.Location);
        foreach (string argument in options.Arguments)
            start.ArgumentList.Add(argument);
        using Process process = Process.Start(start)!;
        string printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? JsonSerializer.Deserialize<GarmentFigures>(printed)!
            : throw new InvalidOperationException($"{options.Case} ended with {process.ExitCode}: {printed}");
    }

    private static string[] Chosen(IReadOnlyList<string> cases, params string[] usual) => cases.Count > 0 ? [.. cases] : usual;

    private static bool Unknown(IEnumerable<string> names, IReadOnlyList<string> known, TextWriter output)
    {
        string[] unknown = [.. names.Except(known)];
        if (unknown.Length > 0)
            output.WriteLine($"There is no {string.Join(", ", unknown)}; there are {string.Join(", ", known)}.");
        return unknown.Length > 0;
    }

    private static string Verdict(bool? isKept) => isKept switch { true => "yes", false => "no", null => "" };

    private static void Head(TextWriter output, params string[] columns) =>
        output.WriteLine($"\n| {string.Join(" | ", columns)} |\n|{string.Concat(Enumerable.Repeat("---|", columns.Length))}");

    private static void Row(TextWriter output, FormattableString cells) => output.WriteLine($"| {Invariant(cells)} |");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
