namespace Nestmark.Geometry.NoFit;

/// <summary>A stretch of region boundary, region on its left.</summary>
internal readonly record struct BoundaryEdge(Point Start, Point End) : IComparable<BoundaryEdge>
{
    /// <summary>The same stretch, run the other way.</summary>
    public BoundaryEdge Reversed => new(End, Start);

    /// <inheritdoc/>
    public int CompareTo(BoundaryEdge other) => Start != other.Start ? Start.CompareTo(other.Start) : End.CompareTo(other.End);
}
