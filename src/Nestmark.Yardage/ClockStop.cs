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

    /// <inheritdoc/>
    public override double SpentRatio(long steps) =>
        AllowedSeconds <= 0 ? 1 : Math.Min(1, Stopwatch.GetElapsedTime(_start).TotalSeconds / AllowedSeconds);
#pragma warning restore RS0030
}
