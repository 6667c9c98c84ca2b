namespace Nestmark.Geometry.Curves;

/// <summary>A point or displacement of a drawing in millimeters, before rounding to micrometers. <c>default</c> is the origin.</summary>
public readonly record struct CurvePoint(double XMillimeters, double YMillimeters)
{
    /// <summary>Its distance from the origin.</summary>
    public double NormMillimeters => Math.Sqrt(XMillimeters * XMillimeters + YMillimeters * YMillimeters);

    /// <summary>Whether both coordinates are numbers within ±1 km, so that <see cref="Rounded"/> works.</summary>
    public bool IsUsable => Math.Abs(XMillimeters) <= 1e6 && Math.Abs(YMillimeters) <= 1e6;

    /// <summary>The sum of two displacements.</summary>
    public static CurvePoint operator +(CurvePoint left, CurvePoint right) =>
        new(left.XMillimeters + right.XMillimeters, left.YMillimeters + right.YMillimeters);

    /// <summary>The displacement from right to left.</summary>
    public static CurvePoint operator -(CurvePoint left, CurvePoint right) =>
        new(left.XMillimeters - right.XMillimeters, left.YMillimeters - right.YMillimeters);

    /// <summary>A multiple of a displacement.</summary>
    public static CurvePoint operator *(CurvePoint point, double factorRatio) =>
        new(point.XMillimeters * factorRatio, point.YMillimeters * factorRatio);

    /// <summary>The point in whole micrometers, each coordinate rounded to the nearest.</summary>
    /// <exception cref="ArgumentException">Not <see cref="IsUsable"/>.</exception>
    public Point Rounded() => Point.FromMillimeters(XMillimeters, YMillimeters);

    internal static double Cross(CurvePoint left, CurvePoint right) =>
        left.XMillimeters * right.YMillimeters - left.YMillimeters * right.XMillimeters;

    internal static double Dot(CurvePoint left, CurvePoint right) =>
        left.XMillimeters * right.XMillimeters + left.YMillimeters * right.YMillimeters;
}
