using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>A line of text.</summary>
internal sealed record DxfText(string Type, string Layer, int Line, string Text, CurvePoint Place, double HeightRatio) : DxfEntity(Type, Layer, Line)
{
    public override bool IsUsable => IsNear(Place);

    public override DxfEntity Mapped(AffineMap map) =>
        this with { Place = map.Apply(Place), HeightRatio = HeightRatio * Math.Sqrt(Math.Abs(map.DeterminantRatio)) };
}
