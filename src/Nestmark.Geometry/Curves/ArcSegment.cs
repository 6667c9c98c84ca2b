namespace Nestmark.Geometry.Curves;

/// <summary>Part of an ellipse: center + cosine axis · cos t + sine axis · sin t, from a start angle over a sweep.</summary>
/// <remarks>The axes need not be square to each other, so any affine image of an arc is again such an arc, exactly.</remarks>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
public sealed record ArcSegment(CurvePoint Start, CurvePoint End) : CurveSegment(Start, End)
{
    /// <summary>The center.</summary>
    public required CurvePoint Center { get; init; }

    /// <summary>From the center to the point at t = 0.</summary>
    public required CurvePoint CosineAxis { get; init; }

    /// <summary>From the center to the point at t = 90 degrees.</summary>
    public required CurvePoint SineAxis { get; init; }

    /// <summary>t at the start.</summary>
    public required double StartDegrees { get; init; }

    /// <summary>How far t runs; below zero when it runs back; within ±360.</summary>
    public required double SweepDegrees { get; init; }

    /// <inheritdoc/>
    public override bool IsUsable => Start.IsUsable && End.IsUsable && Center.IsUsable
        && (Center + CosineAxis).IsUsable && (Center + SineAxis).IsUsable && double.IsFinite(StartDegrees + SweepDegrees);

    /// <summary>A whole ellipse, from its rightmost point toward the y axis.</summary>
    public static ArcSegment Ellipse(CurvePoint center, double radiusXMillimeters, double radiusYMillimeters)
    {
        CurvePoint cosineAxis = new(radiusXMillimeters, 0);
        return new ArcSegment(center + cosineAxis, center + cosineAxis)
        {
            Center = center,
            CosineAxis = cosineAxis,
            SineAxis = new CurvePoint(0, radiusYMillimeters),
            StartDegrees = 0,
            SweepDegrees = 360,
        };
    }

    /// <summary>A whole circle, from its rightmost point toward the y axis.</summary>
    public static ArcSegment Circle(CurvePoint center, double radiusMillimeters) => Ellipse(center, radiusMillimeters, radiusMillimeters);

    /// <inheritdoc/>
    public override CurvePoint PointAt(double parameterRatio) => PointAtDegrees(StartDegrees + SweepDegrees * parameterRatio, 1);

    /// <inheritdoc/>
    public override CurveSegment Mapped(AffineMap map) => new ArcSegment(map.Apply(Start), map.Apply(End))
    {
        Center = map.Apply(Center),
        CosineAxis = map.ApplyToVector(CosineAxis),
        SineAxis = map.ApplyToVector(SineAxis),
        StartDegrees = StartDegrees,
        SweepDegrees = SweepDegrees,
    };

    internal override IEnumerable<CurvePoint> PointsBetween(TangentTurns tangents, double toleranceMillimeters)
    {
        double turning = CurvePoint.Cross(CosineAxis, SineAxis) * SweepDegrees;
        bool wantsTangents = tangents == (turning > 0 ? TangentTurns.Left : TangentTurns.Right);
        int count = StepCount(toleranceMillimeters);
        double step = SweepDegrees / count;
        double reach = 1 / Angle.Cos(step * Math.PI / 360);
        for (int i = wantsTangents ? 0 : 1; i < count; i++)
            yield return wantsTangents ? PointAtDegrees(StartDegrees + step * (i + 0.5), reach) : PointAtDegrees(StartDegrees + step * i, 1);
    }

    /// <summary>Steps of equal t so that neither sagitta r(1 - cos d/2) nor tangent point r(1/cos d/2 - 1) exceeds the tolerance.</summary>
    private int StepCount(double toleranceMillimeters)
    {
        double radius = LongestRadius();
        double widest = Math.Max(1e-3, 2 * Angle.Acos(radius / (radius + toleranceMillimeters)));
        return Math.Max((int)Math.Ceiling(Math.Abs(SweepDegrees) / 90), (int)Math.Ceiling(Math.Abs(SweepDegrees) * Math.PI / 180 / widest));
    }

    private double LongestRadius()
    {
        double squares = CurvePoint.Dot(CosineAxis, CosineAxis) + CurvePoint.Dot(SineAxis, SineAxis);
        double cross = CurvePoint.Cross(CosineAxis, SineAxis);
        return Math.Sqrt((squares + Math.Sqrt(Math.Max(0, squares * squares - 4 * cross * cross))) / 2);
    }

    private CurvePoint PointAtDegrees(double degrees, double reachRatio)
    {
        double radians = degrees * Math.PI / 180;
        return Center + CosineAxis * (reachRatio * Angle.Cos(radians)) + SineAxis * (reachRatio * Angle.Sin(radians));
    }
}
