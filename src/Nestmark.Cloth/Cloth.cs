using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A cloth that pieces are cut from.</summary>
public sealed record Cloth
{
    /// <summary>Name within the job.</summary>
    public required string Name { get; init; }

    /// <summary>Full width, selvages included, as bought.</summary>
    public required Length Width { get; init; }

    /// <summary>Strip kept free along each selvage.</summary>
    public required Length Selvage { get; init; }

    /// <summary>How it is spread.</summary>
    public required LayForm Lay { get; init; }

    /// <summary>Its direction rule.</summary>
    public required Nap Nap { get; init; }

    /// <summary>Part of the length lost in the first wash, 0 up to below 1.</summary>
    public required double LengthShrinkageRatio { get; init; }

    /// <summary>Part of the width lost in the first wash, 0 up to below 1.</summary>
    public required double WidthShrinkageRatio { get; init; }

    /// <summary>Length added at each of the two cut ends.</summary>
    public required Length Ends { get; init; }

    /// <summary>Least clearance between the cutting lines of two placements.</summary>
    public required Length Gap { get; init; }

    /// <summary>Largest deviation from the grain for pieces without a limit of their own.</summary>
    public required Angle Tilt { get; init; }

    /// <summary>How it is sold.</summary>
    public required BuyingRule Buying { get; init; }

    /// <summary>How deep it is folded over, for <see cref="LayForm.PartialFold"/>; <c>null</c> takes the best depth.</summary>
    public Length? FoldDepth { get; init; }

    /// <summary>Which sides may show.</summary>
    public ClothFaces Faces { get; init; }

    /// <summary>Which way it stretches most.</summary>
    public ClothStretch Stretch { get; init; }

    /// <summary>Places to avoid.</summary>
    public ImmutableArray<ClothFlaw> Flaws { get; init; } = [];

    /// <summary>Width of the off-color strip beside the near selvage, within the usable width; zero for none.</summary>
    public Length NearShade { get; init; }

    /// <summary>The same beside the far selvage.</summary>
    public Length FarShade { get; init; }
    /// <summary>Its stripes or plaid; <c>null</c> for plain cloth and prints that need no matching.</summary>
    public ClothRepeat? Repeat { get; init; }

    /// <summary>A border along an edge; <c>null</c> for none.</summary>
    public ClothBorder? Border { get; init; }

    /// <summary>Width left for pieces after the first wash: (width less its shrinkage) less both selvages. Rounded down to a micrometer; zero or less when nothing is left.</summary>
    /// <remarks>Counted in decimals, so that 2 % of 140 cm leaves 137.2 cm exactly.</remarks>
    public Length UsableWidth =>
        Length.FromMicrometers((long)Math.Floor(Width.Micrometers * KeptRatio)) - Selvage * 2;

    private decimal KeptRatio => 1 - (decimal)WidthShrinkageRatio;

    /// <summary>The least full width of a cloth, otherwise like this one, that leaves <paramref name="usable"/> for pieces.</summary>
    /// <exception cref="ArgumentException">The answer lies beyond 1 km.</exception>
    public Length FullWidthFor(Length usable) =>
        Length.FromMicrometers((long)Math.Ceiling((usable + Selvage * 2).Micrometers / KeptRatio));
}
