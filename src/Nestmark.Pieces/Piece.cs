using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A piece ready to be laid: grainline along x; a piece for the fold lies with its fold edge on y = 0 and itself above it. Whole micrometers.</summary>
/// <remarks>A record for its <c>with</c>, so that a changed piece keeps every rule of the one it was; compared by reference; (<see cref="Name"/>, <see cref="Size"/>) is its id within a job. Made by <see cref="PieceMaking"/>.</remarks>
public sealed record Piece
{
    /// <summary>Name within the job.</summary>
    public required string Name { get; init; }

    /// <summary>Size, or empty when it serves every size.</summary>
    public required string Size { get; init; }

    /// <summary>How often it is cut for one garment.</summary>
    public required CutQuantity Cut { get; init; }

    /// <summary>The line of stitching. Equal to the cutting line where nothing was added.</summary>
    public required Polygon SeamLine { get; init; }

    /// <summary>The line that is cut; contains the seam line.</summary>
    public required Polygon CuttingLine { get; init; }

    /// <summary>Where the grain arrow is drawn; along x for every piece.</summary>
    public required Segment Grainline { get; init; }

    /// <summary>The fold edge, on y = 0, start left of end; <c>null</c> for a piece that does not lie on the fold.</summary>
    public required Segment? FoldEdge { get; init; }

    /// <summary>The center line of an unfolded piece: where its fold edge was; <c>null</c> for other pieces.</summary>
    public required Segment? CenterLine { get; init; }

    /// <summary>Lettered corners of the seam line, counter-clockwise from A.</summary>
    public required ImmutableArray<PieceCorner> Corners { get; init; }

    /// <summary>Edges between the corners, the one from A first.</summary>
    public required ImmutableArray<PieceEdge> Edges { get; init; }

    /// <summary>Matching marks.</summary>
    public required ImmutableArray<Notch> Notches { get; init; }

    /// <summary>Lines drawn and not cut.</summary>
    public required ImmutableArray<PieceLine> Lines { get; init; }

    /// <summary>Marked places.</summary>
    public required ImmutableArray<PieceMark> Marks { get; init; }

    /// <summary>How the grainline lies to the selvage.</summary>
    public required GrainRule Grain { get; init; }

    /// <summary>Largest deviation from the grain that it bears; <c>null</c> takes the cloth's.</summary>
    public required Angle? Tilt { get; init; }

    /// <summary>Whether it follows the nap of its cloth.</summary>
    public DirectionRule Direction { get; init; }

    /// <summary>Which way it must stretch most, on a knit.</summary>
    public StretchRule Stretch { get; init; }

    /// <summary>Where on it a flaw of the cloth may lie.</summary>
    public FlawTolerance Flaws { get; init; }

    /// <summary>Seam allowance of each joined edge where the piece may be cut in two and joined by a seam; <c>null</c> where it may not.</summary>
    public Length? PiecedAllowance { get; init; }

    /// <summary>Name and size as people read it: "front M", or "front" without a size.</summary>
    public string Title => Size.Length == 0 ? Name : Name + " " + Size;

    /// <inheritdoc/>
    public bool Equals(Piece? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);
}
