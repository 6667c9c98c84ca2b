using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>One edge of the seam line in the frame of the piece.</summary>
/// <param name="From">Letter where it starts as drawn.</param>
/// <param name="To">Letter where it ends as drawn.</param>
/// <param name="Points">Counter-clockwise as laid; a piece turned over runs against the letters.</param>
/// <param name="Width">Allowance.</param>
/// <param name="Ends">How the allowance ends at both corners.</param>
/// <param name="Kind">Cut or fold.</param>
internal sealed record LaidEdge(string From, string To, ImmutableArray<Point> Points, Length Width, AllowanceEnds Ends, EdgeKind Kind)
{
    public LaidEdge MovedBy(Point shift) => this with { Points = [.. Points.Select(point => point + shift)] };
}
