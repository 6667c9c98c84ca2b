using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>Cuts lines at the edges of an upright window and keeps what lies inside.</summary>
/// <param name="LeftMillimeters">Left edge.</param>
/// <param name="BottomMillimeters">Lower edge.</param>
/// <param name="RightMillimeters">Right edge.</param>
/// <param name="TopMillimeters">Upper edge.</param>
internal readonly record struct TileCutting(double LeftMillimeters, double BottomMillimeters, double RightMillimeters, double TopMillimeters)
{
    private const int Samples = 32;
    private const int Halvings = 48;
    private const double EdgeMillimeters = 1e-6;

    /// <summary>The parts of a line inside the window; the line itself where all of it is.</summary>
    public IEnumerable<SubPath> Inside(SubPath run)
    {
        List<CurveSegment> part = [];
        bool isWhole = true;
        foreach (CurveSegment segment in run.Segments)
        {
            double[] cuts = MayCross(segment) ? [0, .. CutsOf(segment), 1] : [0, 1];
            for (int i = 0; i + 1 < cuts.Length; i++)
            {
                if (Holds(segment.PointAt((cuts[i] + cuts[i + 1]) / 2)))
                {
                    part.Add(cuts.Length == 2 ? segment : PartOf(segment, cuts[i], cuts[i + 1]));
                    continue;
                }
                isWhole = false;
                if (part.Count > 0)
                    yield return new SubPath([.. part], SubPathForm.Open);
                part.Clear();
            }
        }
        if (part.Count > 0)
            yield return isWhole ? run : new SubPath([.. part], SubPathForm.Open);
    }

    /// <summary>Whether a point lies in it or on its edge.</summary>
    public bool Holds(CurvePoint point) =>
        point.XMillimeters >= LeftMillimeters - EdgeMillimeters && point.XMillimeters <= RightMillimeters + EdgeMillimeters
        && point.YMillimeters >= BottomMillimeters - EdgeMillimeters && point.YMillimeters <= TopMillimeters + EdgeMillimeters;

    /// <summary>Whether a segment may cross an edge of the window: not when its control points lie on one side of all four lines, which most do.</summary>
    private bool MayCross(CurveSegment segment)
    {
        if (segment is not (StraightSegment or CubicSegment))
            return true;
        (CurvePoint first, CurvePoint second) = segment is CubicSegment cubic ? (cubic.StartControl, cubic.EndControl) : (segment.Start, segment.End);
        (CurvePoint start, CurvePoint end) = (segment.Start, segment.End);
        double left = Math.Min(Math.Min(start.XMillimeters, end.XMillimeters), Math.Min(first.XMillimeters, second.XMillimeters));
        double right = Math.Max(Math.Max(start.XMillimeters, end.XMillimeters), Math.Max(first.XMillimeters, second.XMillimeters));
        double bottom = Math.Min(Math.Min(start.YMillimeters, end.YMillimeters), Math.Min(first.YMillimeters, second.YMillimeters));
        double top = Math.Max(Math.Max(start.YMillimeters, end.YMillimeters), Math.Max(first.YMillimeters, second.YMillimeters));
        return (left < LeftMillimeters && right >= LeftMillimeters) || (left < RightMillimeters && right >= RightMillimeters)
            || (bottom < BottomMillimeters && top >= BottomMillimeters) || (bottom < TopMillimeters && top >= TopMillimeters);
    }

    /// <summary>The parameters, rising, at which a segment crosses an edge's line.</summary>
    private List<double> CutsOf(CurveSegment segment)
    {
        List<double> cuts = [];
        Func<CurvePoint, double>[] sides = [.. Sides()];
        int samples = segment is StraightSegment ? 1 : Samples;
        foreach (Func<CurvePoint, double> side in sides)
        {
            for (int i = 0; i < samples; i++)
            {
                (double low, double high) = ((double)i / samples, (double)(i + 1) / samples);
                bool isBelow = side(segment.PointAt(low)) < 0;
                if (isBelow == side(segment.PointAt(high)) < 0)
                    continue;
                for (int step = 0; step < Halvings; step++)
                {
                    double middle = (low + high) / 2;
                    if (side(segment.PointAt(middle)) < 0 == isBelow)
                        low = middle;
                    else
                        high = middle;
                }
                if (high is > 1e-9 and < 1 - 1e-9)
                    cuts.Add(high);
            }
        }
        cuts.Sort();
        return cuts;
    }

    private IEnumerable<Func<CurvePoint, double>> Sides()
    {
        TileCutting window = this;
        yield return point => point.XMillimeters - window.LeftMillimeters;
        yield return point => point.XMillimeters - window.RightMillimeters;
        yield return point => point.YMillimeters - window.BottomMillimeters;
        yield return point => point.YMillimeters - window.TopMillimeters;
    }

    private static CurveSegment PartOf(CurveSegment segment, double from, double to)
    {
        if (segment is not CubicSegment cubic)
            return new StraightSegment(segment.PointAt(from), segment.PointAt(to));
        // The part of a cubic between two parameters, from its points and its tangents there (Hermite form).
        double third = (to - from) / 3;
        return new CubicSegment(
            cubic.PointAt(from), cubic.PointAt(from) + Tangent(cubic, from) * third, cubic.PointAt(to) - Tangent(cubic, to) * third, cubic.PointAt(to));
    }

    private static CurvePoint Tangent(CubicSegment cubic, double t)
    {
        double u = 1 - t;
        return (cubic.StartControl - cubic.Start) * (3 * u * u) + (cubic.EndControl - cubic.StartControl) * (6 * u * t) + (cubic.End - cubic.EndControl) * (3 * t * t);
    }
}
