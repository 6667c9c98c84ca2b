using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>A piece drafted from measures: x along the grain, whole micrometers, seam line.</summary>
public sealed record DraftedShape
{
    /// <summary>The seam line, counter-clockwise.</summary>
    public required ImmutableArray<OutlineVertex> Outline { get; init; }

    /// <summary>How often it is cut for one garment.</summary>
    public required CutQuantity Cut { get; init; }

    /// <summary>What was computed, a sentence: "4 panels of 90 degrees, waist radius 11.1 cm."</summary>
    public required string Said { get; init; }

    /// <summary>The edge on the fold; <c>null</c> unless it is cut on the fold.</summary>
    public Segment? FoldLine { get; init; }

    /// <summary>Allowances of single edges; the others take the piece's.</summary>
    public ImmutableArray<EdgeAllowance> Edges { get; init; } = [];

    /// <summary>Notches on the seam line.</summary>
    public ImmutableArray<PieceMark> Notches { get; init; } = [];

    /// <summary>Lines drawn on it.</summary>
    public ImmutableArray<PieceLine> Lines { get; init; } = [];

    /// <summary>How its grain lies; <c>null</c> leaves it to the piece.</summary>
    public GrainRule? Grain { get; init; }
}
