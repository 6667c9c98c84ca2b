using System.Collections.Immutable;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>SPLINE entities, also rational ones, and those with fit points only.</summary>
internal static class DxfSplines
{
    /// <summary>The curve; <c>null</c> when the record has none.</summary>
    public static SubPath? Read(DxfRecord record, Action<Fault> note)
    {
        List<CurvePoint> controls = Places(record, 10, 20);
        List<CurvePoint> fits = Places(record, 11, 21);
        if (controls.Count > DxfLimits.MostControlPoints || fits.Count > DxfLimits.MostControlPoints)
            return Fail(record, "a spline of more than 20,000 points");
        if (controls.Count == 0 && fits.Count >= 2)
        {
            note(DxfFaults.Fitted("SPLINE", fits.Count));
            return FormedBy(FittedCurve.Through(fits));
        }
        int degree = record.Whole(71, 3);
        double[] knots = [.. record.Tags.Where(tag => tag.Code == 40).Select(record.NumberOf)];
        double[] weights = [.. record.Tags.Where(tag => tag.Code == 41).Select(record.NumberOf)];
        if (BSpline.Of(degree, knots, controls, weights) is not BSpline spline)
            return Fail(record, "knots and points that do not fit");
        return FormedBy(spline.ToSegments());
    }

    private static SubPath? FormedBy(ImmutableArray<CurveSegment> segments)
    {
        if (segments.IsEmpty)
            return null;
        double extent = segments.Max(segment => (segment.End - segments[0].Start).NormMillimeters);
        bool comesBack = (segments[^1].End - segments[0].Start).NormMillimeters <= 1e-9 * extent;
        return new SubPath(segments, comesBack ? SubPathForm.Closed : SubPathForm.Open);
    }

    private static List<CurvePoint> Places(DxfRecord record, int xCode, int yCode)
    {
        List<CurvePoint> places = [];
        foreach (DxfTag tag in record.Tags)
        {
            if (tag.Code == xCode)
                places.Add(new CurvePoint(record.NumberOf(tag), 0));
            else if (tag.Code == yCode && places.Count > 0)
                places[^1] = places[^1] with { YMillimeters = record.NumberOf(tag) };
        }
        return places;
    }

    private static SubPath? Fail(DxfRecord record, string what)
    {
        record.NumberOf(new DxfTag(72, what, record.Line));
        return null;
    }
}
