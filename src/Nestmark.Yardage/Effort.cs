using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>How long and how the search may run. Same seed, steps and threads give the same plan.</summary>
/// <param name="Seconds">Wall-clock seconds for all cloths together; <c>null</c> when it stops by steps.</param>
/// <param name="Steps">Steps for each cloth, all threads together; each does its share, rounded up. <c>null</c> when it stops by seconds.</param>
/// <param name="Threads">1 or more.</param>
/// <param name="Seed">Any number.</param>
public sealed record Effort(double? Seconds, long? Steps, int Threads, long Seed)
{
    /// <summary>The stop rule for a search that gets a part of the seconds; steps are not shared out. Seconds begin now.</summary>
    /// <param name="shareRatio">0 to 1.</param>
    internal StopRule Stop(double shareRatio = 1) => Steps is { } steps
        ? new StepStop((steps + Threads - 1) / Threads)
        : new ClockStop(Seconds.GetValueOrDefault() * shareRatio);
}
