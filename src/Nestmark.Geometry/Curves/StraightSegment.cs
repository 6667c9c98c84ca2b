namespace Nestmark.Geometry.Curves;

/// <summary>A straight segment.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
public sealed record StraightSegment(CurvePoint Start, CurvePoint End) : CurveSegment(Start, End)
{
    /// <inheritdoc/>
    public override bool IsUsable => Start.IsUsable && End.IsUsable;

    /// <inheritdoc/>
    public override CurvePoint PointAt(double parameterRatio) => Start + (End - Start) * parameterRatio;

    /// <inheritdoc/>
    public override CurveSegment Mapped(AffineMap map) => new StraightSegment(map.Apply(Start), map.Apply(End));

    internal override IEnumerable<CurvePoint> PointsBetween(TangentTurns tangents, double toleranceMillimeters) => [];
}
