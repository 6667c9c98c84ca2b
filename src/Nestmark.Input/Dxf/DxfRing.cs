using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>A closed run with its flattened form.</summary>
internal sealed record DxfRing(SubPath Run, ImmutableArray<Point> Points, Box Bounds)
{
    /// <summary>Twice the area it encloses, in square micrometers.</summary>
    public double Area { get; } = Math.Abs((double)Polygon.TwiceSignedArea(Points.AsSpan()));

    public static DxfRing Of(SubPath run)
    {
        ImmutableArray<Point> points = Flattening.Open(run.Segments);
        return new DxfRing(run, points, Box.Around(points.AsSpan()));
    }

    /// <summary>Whether a box lies within this ring's box.</summary>
    public bool BoundsHold(Box other) =>
        Bounds.MinX <= other.MinX && Bounds.MinY <= other.MinY && Bounds.MaxX >= other.MaxX && Bounds.MaxY >= other.MaxY;
}
