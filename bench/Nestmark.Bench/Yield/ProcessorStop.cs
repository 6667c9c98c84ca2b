using System.Diagnostics;
using Nestmark.Nesting;

namespace Nestmark.Bench.Yield;

/// <summary>Ends a search after some processor time of this process.</summary>
internal sealed class ProcessorStop : StopRule
{
    private const int AsksBetweenReadings = 50;

    private readonly Process _process = Process.GetCurrentProcess();
    private readonly double _allowedSeconds;
    private readonly double _startSeconds;
    private double _spentRatio;
    private int _asks;

    public ProcessorStop(double allowedSeconds)
    {
        _allowedSeconds = allowedSeconds;
        _startSeconds = _process.TotalProcessorTime.TotalSeconds;
    }

    public override double SpentRatio(long steps)
    {
        if (Interlocked.Increment(ref _asks) % AsksBetweenReadings != 1)
            return _spentRatio;
        lock (_process)
        {
            _process.Refresh();
            _spentRatio = Math.Min(1, (_process.TotalProcessorTime.TotalSeconds - _startSeconds) / _allowedSeconds);
        }
        return _spentRatio;
    }

    /// <inheritdoc/>
    public override StopRule Part(double fromRatio, double toRatio) => new ProcessorStop(_allowedSeconds * (toRatio - fromRatio));
}
