using System.Diagnostics;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Nesting.Search;
using Nestmark.Nesting.Verification;
using Nestmark.Yardage;

namespace Nestmark.Bench.Garments;

/// <summary>Searches one case in this process and measures.</summary>
internal static class GarmentRun
{
    /// <exception cref="InvalidOperationException">The marker is unsound, which is a fault of the program.</exception>
    public static GarmentFigures Of(GarmentOptions options)
    {
        GarmentCase found = GarmentCase.All.First(one => one.Name == options.Case);
        LayTask task = found.Task(options.Seed, Length.FromMillimeters(options.GapMillimeters), Angle.FromDegrees(options.TiltDegrees));
        return options.Kind switch
        {
            GarmentRunKind.First => First(options, task),
            GarmentRunKind.Search => Search(options, task),
            _ => Rate(options, task),
        };
    }

    /// <summary>Twice a search that is to end as soon as it can: one order of the greedy pass, turned into a marker and verified.</summary>
    private static GarmentFigures First(GarmentOptions options, LayTask task)
    {
        ClockStop cold = new(0);
        MarkerMaking.Make(task, Settings(options, cold, _ => { }));
        double coldSeconds = cold.ElapsedSeconds;
        ClockStop warm = new(0);
        Marker marker = MarkerMaking.Make(task, Settings(options, warm, _ => { }));
        double warmSeconds = warm.ElapsedSeconds;
        Judge(options, task, marker);
        return new GarmentFigures { Pieces = marker.Placements.Length, ColdSeconds = coldSeconds, WarmSeconds = warmSeconds, FirstLengthMillimeters = marker.LayLength.TotalMillimeters };
    }

    private static GarmentFigures Search(GarmentOptions options, LayTask task)
    {
        using Process process = Process.GetCurrentProcess();
        using HeapWatch heap = new();
        double before = process.TotalProcessorTime.TotalSeconds;
        double firstLength = 0;
        ClockStop clock = new(options.Seconds);
        Marker marker = MarkerMaking.Make(task, Settings(options, clock, progress => firstLength = firstLength > 0 ? firstLength : progress.BestLayLength.TotalMillimeters));
        double seconds = clock.ElapsedSeconds;
        process.Refresh();
        double processorSeconds = process.TotalProcessorTime.TotalSeconds - before;
        Judge(options, task, marker);
        return new GarmentFigures
        {
            Pieces = marker.Placements.Length,
            FirstLengthMillimeters = firstLength,
            LengthMillimeters = marker.LayLength.TotalMillimeters,
            EfficiencyRatio = marker.EfficiencyRatio,
            Seconds = seconds,
            ProcessorSeconds = processorSeconds,
            PeakHeapMegabytes = heap.Megabytes,
            PeakProcessMegabytes = process.PeakWorkingSet64 / 1e6,
        };
    }

    private static GarmentFigures Rate(GarmentOptions options, LayTask task)
    {
        SearchEffort effort = new();
        RateStop stop = new(options.Seconds, effort);
        Marker marker = MarkerMaking.Make(task, Settings(options, stop, _ => stop.Begin()) with { Effort = effort });
        double seconds = stop.ElapsedSeconds;
        Judge(options, task, marker);
        return new GarmentFigures
        {
            Pieces = marker.Placements.Length,
            Seconds = stop.Done.Seconds,
            ProcessorSeconds = stop.Done.ProcessorSeconds,
            Moves = stop.Done.Moves,
            JudgedPlaces = stop.Done.Places,
            WholePlacesPerSecond = effort.JudgedPlaces / Math.Max(1e-3, seconds),
        };
    }

    private static SearchSettings Settings(GarmentOptions options, StopRule stop, Action<SearchProgress> report) =>
        new(options.Seed, options.Threads, stop, report, CancellationToken.None);

    private static void Judge(GarmentOptions options, LayTask task, Marker marker)
    {
        if (MarkerVerifier.Violations(task, marker) is [string violation, ..])
            throw new InvalidOperationException($"{options.Case}: {violation}");
    }
}
