using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>What a straight strip is made from: a band, a tie, a waistband, a ruffle.</summary>
public sealed record StripMeasures
{
    /// <summary>Length of all strips together along the seam line; above zero.</summary>
    public required Length Total { get; init; }

    /// <summary>Width between the seam lines as cut; above zero.</summary>
    public required Length Width { get; init; }

    /// <summary>How it lies to the grain.</summary>
    public required StripRun Run { get; init; }

    /// <summary>Number of strips; <c>null</c> for one along the grain, and for as few as fit across it.</summary>
    public required int? Count { get; init; }

    /// <summary>How often it is cut, as the user says; <c>null</c> when it is counted. Only along the grain, as one strip.</summary>
    public required CutQuantity? Cut { get; init; }

    /// <summary>Allowance of its ends.</summary>
    public required Length Seam { get; init; }

    /// <summary>Whether it is folded lengthwise when sewn, so that the fold is drawn.</summary>
    public required StripMake Make { get; init; }

    /// <summary>How far its end runs into a point; zero for a square end.</summary>
    public Length Point { get; init; }

    /// <summary>Distances from its start at which its upper edge is notched; counted over all strips.</summary>
    public ImmutableArray<(string Name, Length Along)> Notches { get; init; } = [];
}
