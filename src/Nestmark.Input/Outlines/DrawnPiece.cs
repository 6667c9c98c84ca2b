using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Input.Outlines;

/// <summary>What a drawing or the job file says about the shape of a piece; y up, whole micrometers, outline simple.</summary>
internal sealed record DrawnPiece(ImmutableArray<OutlineVertex> Outline)
{
    /// <summary>Drawing and line, as "smock.svg:12"; empty for a shape in the job file.</summary>
    public string DrawnAt { get; init; } = "";

    /// <summary>Which line the drawing says its outline is; <c>null</c> where it does not say.</summary>
    public OutlineMeaning? Meaning { get; init; }

    public Segment? Grainline { get; init; }

    public Segment? FoldLine { get; init; }

    public ImmutableArray<PieceMark> Notches { get; init; } = [];

    public ImmutableArray<PieceLine> Lines { get; init; } = [];

    public ImmutableArray<PieceMark> Marks { get; init; } = [];

    /// <summary>What the drawing says in words, as "quantity 2"; told in listings, never acted upon.</summary>
    public ImmutableArray<string> Said { get; init; } = [];
}
