using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>A line, arc, polyline or spline.</summary>
internal sealed record DxfCurve(string Type, string Layer, int Line, SubPath Run) : DxfEntity(Type, Layer, Line)
{
    public override int SegmentCount => Run.Segments.Length;

    public override bool IsUsable => Run.Segments.All(segment => segment.IsUsable && IsNear(segment.Start) && IsNear(segment.End));

    public override DxfEntity Mapped(AffineMap map) => this with { Run = Run.Mapped(map) };
}
