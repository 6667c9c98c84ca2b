using System.Diagnostics;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>Ends a search after some seconds of wall-clock time, counted from when it is made.</summary>
/// <remarks>The one file with a clock.</remarks>
public sealed class ClockStop : StopRule
{
#pragma warning disable RS0030 // The one place for a clock.
    private readonly long _start = Stopwatch.GetTimestamp();

    /// <summary>A stop rule whose time begins now.</summary>
    /// <param name="allowedSeconds">Zero or more, at most a million.</param>
    /// <exception cref="ArgumentException">Not a number from zero to a million.</exception>
    public ClockStop(double allowedSeconds)
    {
        if (!(allowedSeconds is >= 0 and <= 1e6))
            throw new ArgumentException("Seconds must lie within 0 to a million.", nameof(allowedSeconds));
        AllowedSeconds = allowedSeconds;
    }

    /// <summary>Wall-clock seconds from making it to the end.</summary>
    public double AllowedSeconds { get; }

    /// <summary>Wall-clock seconds since it was made.</summary>
    public double ElapsedSeconds => Stopwatch.GetElapsedTime(_start).TotalSeconds;

    /// <inheritdoc/>
    public override double SpentRatio(long steps) => AllowedSeconds <= 0 ? 1 : Math.Min(1, ElapsedSeconds / AllowedSeconds);

    /// <inheritdoc/>
    public override StopRule Part(double fromRatio, double toRatio) => new PartOfClock(this, fromRatio, toRatio);
#pragma warning restore RS0030

    /// <summary>A search that starts early or late still ends when it is meant to.</summary>
    private sealed class PartOfClock(ClockStop whole, double fromRatio, double toRatio) : StopRule
    {
        private readonly double _begin = Math.Min(toRatio, Math.Max(fromRatio, whole.SpentRatio(0)));

        public override double SpentRatio(long steps)
        {
            double length = toRatio - _begin;
            return length <= 0 ? 1 : Math.Clamp((whole.SpentRatio(steps) - _begin) / length, 0, 1);
        }

        public override StopRule Part(double partFromRatio, double partToRatio)
        {
            double length = toRatio - fromRatio;
            return new PartOfClock(whole, fromRatio + partFromRatio * length, fromRatio + partToRatio * length);
        }
    }
}
