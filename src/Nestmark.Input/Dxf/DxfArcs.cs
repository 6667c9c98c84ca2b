using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>Circles, arcs, ellipses and the bulges of polylines.</summary>
internal static class DxfArcs
{
    private const double StraightBulge = 1e-9;
    private const double FlatBulge = 0.05;
    private const double LargestBulge = 1e4;

    /// <summary>A CIRCLE or ARC in its own plane; arcs run counter-clockwise from code 50 to code 51.</summary>
    public static SubPath? OfCenter(DxfRecord record)
    {
        CurvePoint center = new(record.Needed(10), record.Needed(20));
        double radius = record.Needed(40);
        if (!(radius > 0))
            return null;
        if (record.Type == "CIRCLE")
            return new SubPath([ArcSegment.Circle(center, radius)], SubPathForm.Closed);
        double start = record.Needed(50) % 360;
        double sweep = Sweep(start, record.Needed(51) % 360, 360);
        return Run(center, new CurvePoint(radius, 0), new CurvePoint(0, radius), start, sweep);
    }

    /// <summary>An ELLIPSE in world coordinates; its parameter runs in radians from code 41 to code 42.</summary>
    public static SubPath? OfEllipse(DxfRecord record)
    {
        CurvePoint major = new(record.Needed(11), record.Needed(21));
        double ratio = Math.Abs(record.Needed(40));
        if (ratio == 0 || major.NormMillimeters == 0)
            return null;
        double side = record.Number(230, 1) < 0 ? -ratio : ratio;
        CurvePoint minor = new CurvePoint(-major.YMillimeters, major.XMillimeters) * side;
        double start = record.Number(41, 0) % (2 * Math.PI);
        double sweep = Sweep(start, record.Number(42, 2 * Math.PI) % (2 * Math.PI), 2 * Math.PI);
        CurvePoint center = new(record.Needed(10), record.Needed(20));
        return Run(center, major, minor, start * 180 / Math.PI, sweep * 180 / Math.PI);
    }

    /// <summary>The segment from one vertex to the next; <c>null</c> when the bulge has no meaning.</summary>
    /// <remarks>Arithmetic: references/formats.md 2.5. Nearly straight arcs become the cubic that is as good as the arc, since their center lies far away.</remarks>
    public static CurveSegment? OfBulge(CurvePoint start, CurvePoint end, double bulge)
    {
        CurvePoint chord = end - start;
        if (Math.Abs(bulge) > LargestBulge)
            return null;
        if (Math.Abs(bulge) < StraightBulge)
            return new StraightSegment(start, end);
        if (Math.Abs(bulge) < FlatBulge)
            return FlatArc(start, end, bulge);
        CurvePoint square = new(-chord.YMillimeters, chord.XMillimeters);
        CurvePoint center = (start + end) * 0.5 + square * ((1 - bulge * bulge) / (4 * bulge));
        double radius = chord.NormMillimeters * (1 + bulge * bulge) / (4 * Math.Abs(bulge));
        CurvePoint from = start - center;
        return new ArcSegment(start, end)
        {
            Center = center,
            CosineAxis = new CurvePoint(radius, 0),
            SineAxis = new CurvePoint(0, radius),
            StartDegrees = Angle.Atan2(from.YMillimeters, from.XMillimeters) * 180 / Math.PI,
            SweepDegrees = 4 * Angle.Atan2(bulge, 1) * 180 / Math.PI,
        };
    }

    private static CubicSegment FlatArc(CurvePoint start, CurvePoint end, double bulge)
    {
        double half = 2 * Angle.Atan2(bulge, 1);
        CurvePoint handle = (end - start) * ((1 + bulge * bulge) / 3);
        (double cosine, double sine) = (Angle.Cos(half), Angle.Sin(half));
        CurvePoint leaving = new(handle.XMillimeters * cosine + handle.YMillimeters * sine, handle.YMillimeters * cosine - handle.XMillimeters * sine);
        CurvePoint arriving = new(handle.XMillimeters * cosine - handle.YMillimeters * sine, handle.YMillimeters * cosine + handle.XMillimeters * sine);
        return new CubicSegment(start, start + leaving, end - arriving, end);
    }

    private static double Sweep(double start, double end, double full)
    {
        double sweep = end - start;
        while (sweep <= full * 1e-12)
            sweep += full;
        return sweep > full ? sweep - full : sweep;
    }

    private static SubPath Run(CurvePoint center, CurvePoint cosineAxis, CurvePoint sineAxis, double startDegrees, double sweepDegrees)
    {
        ArcSegment arc = new(default, default)
        {
            Center = center,
            CosineAxis = cosineAxis,
            SineAxis = sineAxis,
            StartDegrees = startDegrees,
            SweepDegrees = sweepDegrees,
        };
        bool isWhole = sweepDegrees > 360 - 1e-9;
        arc = arc with { Start = arc.PointAt(0), End = arc.PointAt(isWhole ? 0 : 1) };
        return new SubPath([arc], isWhole ? SubPathForm.Closed : SubPathForm.Open);
    }
}
