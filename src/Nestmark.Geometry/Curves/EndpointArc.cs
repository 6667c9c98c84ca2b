namespace Nestmark.Geometry.Curves;

/// <summary>An elliptical arc given by its two ends, as drawings write it.</summary>
public sealed record EndpointArc
{
    /// <summary>Where it begins.</summary>
    public required CurvePoint Start { get; init; }

    /// <summary>Where it ends.</summary>
    public required CurvePoint End { get; init; }

    /// <summary>First radius; its sign does not matter, zero makes the arc straight.</summary>
    public required double RadiusXMillimeters { get; init; }

    /// <summary>Second radius; its sign does not matter, zero makes the arc straight.</summary>
    public required double RadiusYMillimeters { get; init; }

    /// <summary>Direction of the first radius from the x axis.</summary>
    public required double RotationDegrees { get; init; }

    /// <summary>The shorter or the longer way round.</summary>
    public required ArcSize Size { get; init; }

    /// <summary>Which way round.</summary>
    public required ArcSense Sense { get; init; }

    /// <summary>The arc in center form; straight where a radius is zero or the ends coincide (within 1e-9); radii too small for the ends are widened to fit.</summary>
    /// <remarks>SVG 2, implementation notes, conversion from endpoint to center; references/formats.md 3.3 names the steps.</remarks>
    public CurveSegment ToSegment()
    {
        double rx = Math.Abs(RadiusXMillimeters);
        double ry = Math.Abs(RadiusYMillimeters);
        if ((End - Start).NormMillimeters < 1e-9 || rx == 0 || ry == 0)
            return new StraightSegment(Start, End);
        double rotation = RotationDegrees % 360 * Math.PI / 180;
        CurvePoint xAxis = new(Angle.Cos(rotation), Angle.Sin(rotation));
        CurvePoint yAxis = new(-xAxis.YMillimeters, xAxis.XMillimeters);
        CurvePoint half = (Start - End) * 0.5;

        // The ends in the frame of the ellipse, as if it were the unit circle.
        CurvePoint end = new(CurvePoint.Dot(half, xAxis) / rx, CurvePoint.Dot(half, yAxis) / ry);
        double reach = end.NormMillimeters;
        double widening = Math.Max(1, reach);
        double away = Math.Sqrt(Math.Max(0, 1 / (reach * reach) - 1)) * (IsOnTheRight ? -1 : 1);
        CurvePoint unitCenter = reach > 1 ? default : new CurvePoint(end.YMillimeters * away, -end.XMillimeters * away);
        return FromUnitCircle(end * (1 / widening), unitCenter, xAxis * (rx * widening), yAxis * (ry * widening));
    }

    private bool IsOnTheRight => (Size == ArcSize.Large) == (Sense == ArcSense.Rising);

    private ArcSegment FromUnitCircle(CurvePoint end, CurvePoint center, CurvePoint cosineAxis, CurvePoint sineAxis)
    {
        CurvePoint from = end - center;
        CurvePoint to = end * -1 - center;
        double start = Angle.Atan2(from.YMillimeters, from.XMillimeters) * 180 / Math.PI;
        double sweep = Angle.Atan2(to.YMillimeters, to.XMillimeters) * 180 / Math.PI - start;
        if (Sense == ArcSense.Falling && sweep > 0)
            sweep -= 360;
        if (Sense == ArcSense.Rising && sweep < 0)
            sweep += 360;
        return new ArcSegment(Start, End)
        {
            Center = (Start + End) * 0.5 + cosineAxis * center.XMillimeters + sineAxis * center.YMillimeters,
            CosineAxis = cosineAxis,
            SineAxis = sineAxis,
            StartDegrees = start,
            SweepDegrees = sweep,
        };
    }
}
