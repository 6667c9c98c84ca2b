namespace Nestmark.Geometry.Curves;

/// <summary>A map that keeps straight lines straight: x' = Xx·x + Xy·y + X, y' = Yx·x + Yy·y + Y. <c>default</c> sends everything to the origin.</summary>
public readonly record struct AffineMap(
    double XxRatio, double XyRatio, double YxRatio, double YyRatio, double XMillimeters, double YMillimeters)
{
    /// <summary>Leaves every point where it is.</summary>
    public static AffineMap Identity => new(1, 0, 0, 1, 0, 0);

    /// <summary>Factor by which it changes areas; below zero when it mirrors.</summary>
    public double DeterminantRatio => XxRatio * YyRatio - XyRatio * YxRatio;

    /// <summary>A move.</summary>
    public static AffineMap Shift(double xMillimeters, double yMillimeters) => new(1, 0, 0, 1, xMillimeters, yMillimeters);

    /// <summary>A scale along each axis.</summary>
    public static AffineMap Scale(double xRatio, double yRatio) => new(xRatio, 0, 0, yRatio, 0, 0);

    /// <summary>A turn about the origin, from the x axis toward the y axis; exact for quarter turns.</summary>
    public static AffineMap Turn(Angle angle)
    {
        double cosine = angle.CosineRatio;
        double sine = angle.SineRatio;
        return new AffineMap(cosine, -sine, sine, cosine, 0, 0);
    }

    /// <summary>The map that applies <paramref name="first"/> and then this one.</summary>
    public AffineMap After(AffineMap first) => new(
        XxRatio * first.XxRatio + XyRatio * first.YxRatio,
        XxRatio * first.XyRatio + XyRatio * first.YyRatio,
        YxRatio * first.XxRatio + YyRatio * first.YxRatio,
        YxRatio * first.XyRatio + YyRatio * first.YyRatio,
        XxRatio * first.XMillimeters + XyRatio * first.YMillimeters + XMillimeters,
        YxRatio * first.XMillimeters + YyRatio * first.YMillimeters + YMillimeters);

    /// <summary>Where a point goes.</summary>
    public CurvePoint Apply(CurvePoint point) => ApplyToVector(point) + new CurvePoint(XMillimeters, YMillimeters);

    /// <summary>Where a displacement goes; the move is left out.</summary>
    public CurvePoint ApplyToVector(CurvePoint vector) => new(
        XxRatio * vector.XMillimeters + XyRatio * vector.YMillimeters,
        YxRatio * vector.XMillimeters + YyRatio * vector.YMillimeters);
}
