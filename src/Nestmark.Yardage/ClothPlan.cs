using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>The plan for one cloth.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Marker">Its marker, verified; its surface says how the cloth is spread.</param>
/// <param name="Purchase">What to buy.</param>
public sealed record ClothPlan(Cloth Cloth, Marker Marker, Purchase Purchase)
{
    /// <summary>Where the form of lay was to be chosen: a marker in each other form, the one that needs least cloth first.</summary>
    public ImmutableArray<Marker> OtherForms { get; init; } = [];

    /// <summary>The leftovers that the marker lies on; <c>null</c> for cloth to buy.</summary>
    public RemnantTable? Leftovers { get; init; }

    /// <summary>What matching the print costs; <c>null</c> when nothing is matched.</summary>
    public MatchingCost? Matching { get; init; }

    /// <summary>The rules of matching that its marker keeps, as the user wrote them.</summary>
    public ImmutableArray<string> Rules { get; init; } = [];
}
