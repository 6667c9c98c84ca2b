using System.Collections.Immutable;
using Nestmark.Cloths;

namespace Nestmark.Yardage;

/// <summary>Whether the pieces of one cloth come out of its leftovers.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Layout">What lies on which leftover; <c>null</c> where there is no leftover of this cloth.</param>
/// <param name="Missing">What found no place; empty when everything fits.</param>
/// <param name="More">What the missing pieces would need of the cloth as bought, laid open; <c>null</c> when nothing is missing or something is too large for it.</param>
/// <param name="Helps">What would make everything fit, each tried with a verified layout: what the job permits first.</param>
public sealed record ClothFit(
    Cloth Cloth, ClothPlan? Layout, ImmutableArray<MissingPiece> Missing, ClothPlan? More, ImmutableArray<FitHelp> Helps)
{
    /// <summary>Rules of matching that were not kept, as the user wrote them: leftovers are laid as plain cloth.</summary>
    public ImmutableArray<string> NotKept { get; init; } = [];

    /// <summary>What the user should know about it.</summary>
    public ImmutableArray<Problem> Notes { get; init; } = [];

    /// <summary>Whether everything has a place.</summary>
    public bool IsComplete => Missing.IsEmpty;
}
