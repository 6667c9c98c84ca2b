using System.Collections.Immutable;
using Nestmark.Yardage.Saving;

namespace Nestmark.Yardage;

/// <summary>The answer to a job.</summary>
/// <param name="Job">The job.</param>
/// <param name="Effort">What the search was allowed.</param>
/// <param name="Cloths">One plan a cloth, in the job's order.</param>
/// <param name="Notes">What the user should know: mended pieces, left-out wishes.</param>
public sealed record Plan(Job Job, Effort Effort, ImmutableArray<ClothPlan> Cloths, ImmutableArray<Problem> Notes)
{
    /// <summary>What would need less cloth; <c>null</c> when it was not asked for.</summary>
    public SavingReport? Savings { get; init; }

    /// <summary>Whether every piece has its place.</summary>
    public bool IsComplete => Cloths.All(cloth => cloth.Marker.Unplaced.IsEmpty);
}
