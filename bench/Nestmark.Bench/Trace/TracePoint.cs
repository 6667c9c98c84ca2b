namespace Nestmark.Bench.Trace;

/// <summary>A better lay, when it was found.</summary>
/// <param name="Seconds">Since the start of the run, by its clock.</param>
/// <param name="Steps">Steps of all threads.</param>
/// <param name="Length">Length of the lay, in the instance's units.</param>
internal readonly record struct TracePoint(double Seconds, long Steps, double Length);
