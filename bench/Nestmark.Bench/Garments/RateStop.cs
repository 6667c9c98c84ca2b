using System.Diagnostics;
using Nestmark.Nesting;
using Nestmark.Nesting.Search;
using Nestmark.Yardage;

namespace Nestmark.Bench.Garments;

/// <summary>Ends a search some seconds after its first lay, and takes readings from 40 % to 80 % of that time, when most no-fit polygons are made and outlines are simplified still.</summary>
internal sealed class RateStop(double seconds, SearchEffort effort) : StopRule
{
    private const double From = 0.4;
    private const double To = 0.8;

    private readonly Lock _reading = new();
    private volatile ClockStop? _clock;
    private volatile int _readings;

    /// <summary>What stood on the clocks and counters at the beginning of the measured part; at the end what was done in it.</summary>
    public (double Seconds, double ProcessorSeconds, long Moves, long Places) Done { get; private set; }

    /// <summary>Seconds since the first lay.</summary>
    public double ElapsedSeconds => _clock?.ElapsedSeconds ?? 0;

    /// <summary>Starts the time, once.</summary>
    public void Begin() => _clock ??= new ClockStop(seconds);

    public override double SpentRatio(long steps)
    {
        double spent = _clock?.SpentRatio(steps) ?? 0;
        if ((_readings == 0 && spent >= From) || (_readings == 1 && spent >= To))
            Read();
        return spent;
    }

    public override StopRule Part(double fromRatio, double toRatio) => throw new NotSupportedException("Measured in one piece.");

    private void Read()
    {
        lock (_reading)
        {
            double spent = _clock!.SpentRatio(0);
            if (_readings >= 2 || spent < (_readings == 0 ? From : To))
                return;
            using Process process = Process.GetCurrentProcess();
            (double Seconds, double ProcessorSeconds, long Moves, long Places) now = (_clock.ElapsedSeconds, process.TotalProcessorTime.TotalSeconds, effort.Steps, effort.JudgedPlaces);
            Done = _readings == 0 ? now : (now.Seconds - Done.Seconds, now.ProcessorSeconds - Done.ProcessorSeconds, now.Moves - Done.Moves, now.Places - Done.Places);
            _readings++;
        }
    }
}
