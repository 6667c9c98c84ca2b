using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>One of the two edges at a corner, seen from the corner outward along the edge. Micrometers.</summary>
internal sealed class AllowanceSide(AllowanceEdge edge)
{
    /// <summary>The seam line from the corner on.</summary>
    public required ImmutableArray<Vector> SeamLine { get; init; }

    public Vector Corner => SeamLine[0];

    /// <summary>From the corner along the edge; length one.</summary>
    public required Vector Along { get; init; }

    /// <summary>Square out of the piece at the corner; length one.</summary>
    public required Vector Outward { get; init; }

    /// <summary>Length of the straight run at the corner.</summary>
    public required double SegmentMicrometers { get; init; }

    /// <summary>The cut edge from the corner on, without both ends.</summary>
    public required ImmutableArray<Vector> Inner { get; init; }

    /// <summary>Where the cut edge stands square off the other corner.</summary>
    public required Vector FarFoot { get; init; }

    public double Width => edge.Width;

    public AllowanceEnds Ends => edge.Ends;

    public EdgeKind Kind => edge.Kind;

    /// <summary>Where the cut edge stands square off the corner.</summary>
    public Vector Foot => Corner + Width * Outward;

    /// <summary>How many points of <see cref="Inner"/> the corner has cut away. Set by the join.</summary>
    public int Dropped { get; set; }

    /// <summary>Where a place of the allowance comes to lie when the allowance is turned up along the seam line, which runs on straight beyond the corner.</summary>
    public Vector TurnedUp(Vector place, double beyondMicrometers)
    {
        ImmutableArray<Vector> line = [Corner - beyondMicrometers * Along, .. SeamLine];
        Vector foot = Enumerable.Range(0, line.Length - 1).Select(i => Nearest.OnSegment(line[i], line[i + 1], place)).MinBy(near => (near - place).Norm);
        return 2 * foot - place;
    }

    /// <summary>The whole cut edge, drawn out straight beyond the corner.</summary>
    public ImmutableArray<Vector> Run(double beyondMicrometers) => [Foot - beyondMicrometers * Along, .. Inner, FarFoot];
}
