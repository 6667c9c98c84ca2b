namespace Nestmark.Geometry.Curves;

/// <summary>One drawn segment of a path: straight, cubic or elliptical, in millimeters.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
public abstract record CurveSegment(CurvePoint Start, CurvePoint End)
{
    /// <summary>Whether every number in it lies within ±1 km, so that it can be flattened.</summary>
    public abstract bool IsUsable { get; }

    /// <summary>The point at a parameter from 0 (start) to 1 (end); exact but for the machine's rounding.</summary>
    public abstract CurvePoint PointAt(double parameterRatio);

    /// <summary>The segment with every point mapped; exact, since all three kinds stay what they are.</summary>
    public abstract CurveSegment Mapped(AffineMap map);

    /// <summary>The points between start and end, both left out.</summary>
    internal abstract IEnumerable<CurvePoint> PointsBetween(TangentTurns tangents, double toleranceMillimeters);
}
