namespace Nestmark.Geometry.Curves;

/// <summary>A cubic Bézier segment.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="StartControl">Sets the direction at the start.</param>
/// <param name="EndControl">Sets the direction at the end.</param>
/// <param name="End">Where it ends.</param>
public sealed record CubicSegment(CurvePoint Start, CurvePoint StartControl, CurvePoint EndControl, CurvePoint End)
    : CurveSegment(Start, End)
{
    /// <inheritdoc/>
    public override bool IsUsable => Start.IsUsable && StartControl.IsUsable && EndControl.IsUsable && End.IsUsable;

    /// <summary>A quadratic segment as the cubic that is the same curve (degree elevation).</summary>
    public static CubicSegment FromQuadratic(CurvePoint start, CurvePoint control, CurvePoint end) =>
        new(start, start + (control - start) * (2 / 3.0), end + (control - end) * (2 / 3.0), end);

    /// <inheritdoc/>
    public override CurvePoint PointAt(double parameterRatio)
    {
        double t = parameterRatio;
        double u = 1 - t;
        return Start * (u * u * u) + StartControl * (3 * u * u * t) + EndControl * (3 * u * t * t) + End * (t * t * t);
    }

    /// <inheritdoc/>
    public override CurveSegment Mapped(AffineMap map) =>
        new CubicSegment(map.Apply(Start), map.Apply(StartControl), map.Apply(EndControl), map.Apply(End));

    internal override IEnumerable<CurvePoint> PointsBetween(TangentTurns tangents, double toleranceMillimeters) =>
        CubicFlattening.PointsBetween(this, tangents, toleranceMillimeters);

    /// <summary>The parts before and after a parameter (de Casteljau).</summary>
    internal (CubicSegment Before, CubicSegment After) SplitAt(double parameterRatio)
    {
        CurvePoint a = Between(Start, StartControl, parameterRatio);
        CurvePoint b = Between(StartControl, EndControl, parameterRatio);
        CurvePoint c = Between(EndControl, End, parameterRatio);
        CurvePoint ab = Between(a, b, parameterRatio);
        CurvePoint bc = Between(b, c, parameterRatio);
        CurvePoint middle = Between(ab, bc, parameterRatio);
        return (new CubicSegment(Start, a, ab, middle), new CubicSegment(middle, bc, c, End));
    }

    private static CurvePoint Between(CurvePoint from, CurvePoint to, double ratio) => from + (to - from) * ratio;
}
