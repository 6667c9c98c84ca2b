using System.Collections.Immutable;

namespace Nestmark.Yardage;

/// <summary>Whether a job comes out of its leftovers.</summary>
/// <param name="Plan">The layouts, cloth by cloth, as every output draws them.</param>
/// <param name="Cloths">The verdict for each cloth that pieces are cut from.</param>
public sealed record FitPlan(Plan Plan, ImmutableArray<ClothFit> Cloths)
{
    /// <summary>The layouts with a change that the job permits and with which more comes out; <c>null</c> when there is none, or none is needed.</summary>
    public Plan? Instead { get; init; }

    /// <summary>Whether everything has a place.</summary>
    public bool IsComplete => Cloths.All(cloth => cloth.IsComplete);
}
