using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>Something drawn; in the drawing's units until it is mapped to millimeters.</summary>
/// <param name="Type">Its name in the file, as LINE.</param>
/// <param name="Layer">Its layer.</param>
/// <param name="Line">Its line in the file.</param>
internal abstract record DxfEntity(string Type, string Layer, int Line)
{
    /// <summary>How many segments it has; at least 1.</summary>
    public virtual int SegmentCount => 1;

    /// <summary>Whether it lies within bounds, in millimeters.</summary>
    public abstract bool IsUsable { get; }

    public abstract DxfEntity Mapped(AffineMap map);

    protected static bool IsNear(CurvePoint point) =>
        Math.Abs(point.XMillimeters) <= DxfLimits.FarthestMillimeters && Math.Abs(point.YMillimeters) <= DxfLimits.FarthestMillimeters;
}
