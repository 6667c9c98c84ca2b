using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A piece as read, before allowances: everything in the frame of the drawing, y up, whole micrometers.</summary>
public sealed record PieceDraft
{
    /// <summary>Name within the job.</summary>
    public required string Name { get; init; }

    /// <summary>Size, or empty when the piece serves every size.</summary>
    public required string Size { get; init; }

    /// <summary>Outline: simple, three vertices or more, first not repeated; either way round.</summary>
    public required ImmutableArray<OutlineVertex> Outline { get; init; }

    /// <summary>Letters of the corners where an alteration has kept them, each at a vertex of the outline; empty letters the corners by their turns.</summary>
    public ImmutableArray<PieceCorner> Corners { get; init; } = [];

    /// <summary>Which line the outline is.</summary>
    public required OutlineMeaning Meaning { get; init; }

    /// <summary>How often it is cut for one garment.</summary>
    public required CutQuantity Cut { get; init; }

    /// <summary>Seam allowance of every edge without one of its own.</summary>
    public required Length Seam { get; init; }

    /// <summary>Allowances of single edges.</summary>
    public required ImmutableArray<EdgeAllowance> Edges { get; init; }

    /// <summary>Longest corner point, in multiples of the wider allowance; sharper points are cut square to the bisector. 1 or more.</summary>
    public required double PointLimitRatio { get; init; }

    /// <summary>The drawn grainline; <c>null</c> means along the fold edge, or along x where there is none.</summary>
    public required Segment? Grainline { get; init; }

    /// <summary>The drawn fold edge, both ends on the outline; or <c>null</c>.</summary>
    public required Segment? FoldLine { get; init; }

    /// <summary>The fold edge by its letters, as "D-A"; empty when not named. Used when there is no drawn one.</summary>
    public required string FoldEdge { get; init; }

    /// <summary>Notches as drawn: name, and a place within 3 mm of the outline.</summary>
    public required ImmutableArray<PieceMark> Notches { get; init; }

    /// <summary>Lines drawn on the piece.</summary>
    public required ImmutableArray<PieceLine> Lines { get; init; }

    /// <summary>Marks drawn on the piece.</summary>
    public required ImmutableArray<PieceMark> Marks { get; init; }

    /// <summary>How the grainline lies to the selvage.</summary>
    public required GrainRule Grain { get; init; }

    /// <summary>Largest deviation from the grain that this piece bears; <c>null</c> takes the cloth's.</summary>
    public required Angle? Tilt { get; init; }

    /// <summary>Whether it follows the nap of its cloth.</summary>
    public DirectionRule Direction { get; init; }

    /// <summary>Which way it must stretch most, on a knit.</summary>
    public StretchRule Stretch { get; init; }

    /// <summary>Where on it a flaw of the cloth may lie.</summary>
    public FlawTolerance Flaws { get; init; }

    /// <summary>Seam allowance of each joined edge where the piece may be cut in two and joined by a seam; <c>null</c> where it may not.</summary>
    public Length? PiecedAllowance { get; init; }

    /// <summary>Allowances that may become narrower where cloth is short; none may unless it is listed here.</summary>
    public ImmutableArray<LeastAllowance> Least { get; init; } = [];
}
