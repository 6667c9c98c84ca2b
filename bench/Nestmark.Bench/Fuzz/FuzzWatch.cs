using System.Diagnostics;

// A fuzzer is told how long to run, and hangs are told from work by the clock.
#pragma warning disable RS0030

namespace Nestmark.Bench.Fuzz;

/// <summary>Watches one input being read from another thread: how much processor time it takes, and how much memory the process holds.</summary>
/// <remarks>Processor time, since a busy machine makes every input slow by the clock.</remarks>
internal sealed class FuzzWatch : IDisposable
{
    /// <summary>An input that takes longer hangs.</summary>
    public const double MostSeconds = 20;

    /// <summary>More than this held at a time is too much.</summary>
    public const long MostBytes = 500L << 20;

    private readonly Timer _timer;
    private readonly Action<string> _alarm;
    private readonly long _opened = Stopwatch.GetTimestamp();
    private long _started;

    /// <summary>Begins to watch.</summary>
    /// <param name="alarm">Called with what is wrong; the process may be ended there.</param>
    public FuzzWatch(Action<string> alarm)
    {
        _alarm = alarm;
        _timer = new Timer(_ => Look(), null, 100, 100);
    }

    /// <summary>The most memory held so far.</summary>
    public long PeakBytes { get; private set; }

    /// <summary>Minutes since it began to watch.</summary>
    public double Minutes => Stopwatch.GetElapsedTime(_opened).TotalMinutes;

    /// <summary>The longest that an input took.</summary>
    public double SlowestSeconds { get; private set; }

    /// <summary>An input begins.</summary>
    public void Begin() => Interlocked.Exchange(ref _started, UsedTicks + 1);

    /// <summary>An input is done.</summary>
    public void End() => SlowestSeconds = Math.Max(SlowestSeconds, SecondsSince(Interlocked.Exchange(ref _started, 0)));

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();

    private static long UsedTicks => Environment.CpuUsage.TotalTime.Ticks;

    private static double SecondsSince(long started) => TimeSpan.FromTicks(UsedTicks + 1 - started).TotalSeconds;

    private void Look()
    {
        long started = Interlocked.Read(ref _started);
        if (started != 0 && SecondsSince(started) > MostSeconds)
            _alarm($"takes longer than {MostSeconds} s");
        long held = Environment.WorkingSet;
        PeakBytes = Math.Max(PeakBytes, held);
        if (held > MostBytes)
            _alarm($"holds {held >> 20} MB");
    }
}
