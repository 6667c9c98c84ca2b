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

    /// <summary>Twice a search that is cancelled as soon as it has a complete marker.</summary>
    private static GarmentFigures First(GarmentOptions options, LayTask task)
    {
        (double coldSeconds, _) = UntilFirst(options, task);
        (double warmSeconds, Marker marker) = UntilFirst(options, task);
        return new GarmentFigures { Pieces = marker.Placements.Length, ColdSeconds = coldSeconds, WarmSeconds = warmSeconds, FirstLengthMillimeters = marker.LayLength.TotalMillimeters };
    }

    /// <summary>Seconds until the first complete verified marker is reported, and that marker.</summary>
    private static (double Seconds, Marker Marker) UntilFirst(GarmentOptions options, LayTask task)
    {
        using CancellationTokenSource first = new();
        ClockStop clock = new(options.Seconds);
        double seconds = 0;
        Marker marker = MarkerMaking.Make(task, Settings(options, clock, _ => Stop()) with { Cancellation = first.Token }, Tuned.Of(options.Tuning));
        Judge(options, task, marker);
        return (seconds, marker);

        void Stop()
        {
            if (first.IsCancellationRequested)
                return;
            seconds = clock.ElapsedSeconds;
            first.Cancel();
        }
    }

    private static GarmentFigures Search(GarmentOptions options, LayTask task)
    {
        using Process process = Process.GetCurrentProcess();
        using HeapWatch heap = new();
        double before = process.TotalProcessorTime.TotalSeconds;
        double firstLength = 0;
        ClockStop clock = new(options.Seconds);
        Marker marker = MarkerMaking.Make(task, Settings(options, clock, progress => firstLength = firstLength > 0 ? firstLength : progress.BestLayLength.TotalMillimeters), Tuned.Of(options.Tuning));
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
        Marker marker = MarkerMaking.Make(task, Settings(options, stop, _ => stop.Begin()) with { Effort = effort }, Tuned.Of(options.Tuning));
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
            Reach = Reach.Of(marker),
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
