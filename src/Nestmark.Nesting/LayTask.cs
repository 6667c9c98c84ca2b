using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>What to place on one lay.</summary>
/// <param name="Surface">The lay; every form but the mixed one, which is made of two tasks.</param>
/// <param name="Gap">Least clearance between two cutting lines; zero or more.</param>
/// <param name="Demands">What to place, in the order of the job.</param>
/// <param name="Impossible">What was asked for and cannot lie here; handed on to the marker.</param>
public sealed record LayTask(
    LaySurface Surface, Length Gap, ImmutableArray<Demand> Demands, ImmutableArray<Unplaced> Impossible)
{
    /// <summary>Places to keep free. With any, x = 0 is where the usable cloth begins, and the lay does not move along it.</summary>
    public ImmutableArray<Obstacle> Obstacles { get; init; } = [];

    /// <summary>Where the print lies; <c>null</c> when no demand is held by it.</summary>
    public LayPrint? Print { get; init; }
}
