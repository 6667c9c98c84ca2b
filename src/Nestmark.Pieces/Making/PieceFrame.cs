using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>From the frame of the drawing to the frame of the piece: turned, then moved.</summary>
internal readonly record struct PieceFrame(Turn Turn, Point Shift)
{
    public Point Apply(Point point) => Turn.Apply(point) + Shift;

    public ImmutableArray<Point> Apply(ImmutableArray<Point> points)
    {
        PieceFrame frame = this;
        return [.. points.Select(frame.Apply)];
    }

    public PieceFrame MovedBy(Point shift) => this with { Shift = Shift + shift };
}
