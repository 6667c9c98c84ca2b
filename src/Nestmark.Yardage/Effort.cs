namespace Nestmark.Yardage;

/// <summary>How long and how the search may run. Same seed, steps and threads give the same plan.</summary>
/// <param name="Seconds">Wall-clock seconds for all cloths together; <c>null</c> when it stops by steps.</param>
/// <param name="Steps">Steps for each cloth, all threads together; each does its share, rounded up. <c>null</c> when it stops by seconds.</param>
/// <param name="Threads">1 or more.</param>
/// <param name="Seed">Any number.</param>
public sealed record Effort(double? Seconds, long? Steps, int Threads, long Seed);
