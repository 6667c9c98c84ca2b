using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>A place.</summary>
internal sealed record DxfPoint(string Layer, int Line, CurvePoint Place) : DxfEntity("POINT", Layer, Line)
{
    public override bool IsUsable => IsNear(Place);

    public override DxfEntity Mapped(AffineMap map) => this with { Place = map.Apply(Place) };
}
