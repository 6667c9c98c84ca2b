using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>A B-spline, rational or not, and its way into Bézier segments.</summary>
/// <remarks>
/// Each knot span is a Bézier curve whose control points are values of the spline's blossom (Ramshaw 1987), found by de Boor's scheme.
/// Degrees 1 to 3 without weights are taken over exactly; others are met by cubics within 5 millionths of the spline's extent.
/// </remarks>
internal sealed class BSpline
{
    private const double FittingRatio = 5e-6;
    private const int DeepestSplit = 10;
    private readonly int _degree;
    private readonly double[] _knots;
    private readonly Weighted[] _controls;
    private readonly bool _isRational;
    private readonly double _tolerance;

    private BSpline(int degree, double[] knots, Weighted[] controls, bool isRational)
    {
        (_degree, _knots, _controls, _isRational) = (degree, knots, controls, isRational);
        CurvePoint[] places = [.. controls.Select(control => control.Place)];
        double width = places.Max(place => place.XMillimeters) - places.Min(place => place.XMillimeters);
        double height = places.Max(place => place.YMillimeters) - places.Min(place => place.YMillimeters);
        _tolerance = FittingRatio * Math.Max(width, height);
    }

    /// <summary>The spline; <c>null</c> when its numbers do not fit together: rising knots, as many as points + degree + 1, weights above zero.</summary>
    public static BSpline? Of(int degree, double[] knots, IReadOnlyList<CurvePoint> controls, double[] weights)
    {
        bool fits = degree is >= 1 and <= DxfLimits.HighestDegree && controls.Count > degree && knots.Length == controls.Count + degree + 1
            && (weights.Length == 0 || weights.Length == controls.Count);
        if (!fits || weights.Any(weight => !(weight > 1e-9)))
            return null;
        for (int i = 1; i < knots.Length; i++)
        {
            if (knots[i] < knots[i - 1])
                return null;
        }
        Weighted[] weighted = [.. controls.Select((place, i) => Weighted.Of(place, weights.Length == 0 ? 1 : weights[i]))];
        bool isRational = weights.Length > 0 && weights.Max() - weights.Min() > 1e-12 * weights.Max();
        return new BSpline(degree, knots, weighted, isRational);
    }

    /// <summary>Segments head to tail over the whole domain; empty when the domain is.</summary>
    public ImmutableArray<CurveSegment> ToSegments()
    {
        ImmutableArray<CurveSegment>.Builder segments = ImmutableArray.CreateBuilder<CurveSegment>();
        for (int span = _degree; span < _controls.Length; span++)
        {
            if (_knots[span + 1] > _knots[span])
                Add(segments, [.. Enumerable.Range(0, _degree + 1).Select(j => Blossom(span, j))]);
        }
        return segments.ToImmutable();
    }

    /// <summary>The blossom with the span's end <paramref name="ends"/> times and its start for the rest.</summary>
    private Weighted Blossom(int span, int ends)
    {
        Weighted[] values = _controls[(span - _degree)..(span + 1)];
        for (int round = 1; round <= _degree; round++)
        {
            double parameter = round <= ends ? _knots[span + 1] : _knots[span];
            for (int i = _degree; i >= round; i--)
            {
                double low = _knots[span - _degree + i];
                double high = _knots[span + 1 + i - round];
                values[i] = Weighted.Between(values[i - 1], values[i], (parameter - low) / (high - low));
            }
        }
        return values[_degree];
    }

    private void Add(ImmutableArray<CurveSegment>.Builder segments, Weighted[] bezier)
    {
        CurvePoint start = segments.Count > 0 ? segments[^1].End : bezier[0].Place;
        CurvePoint end = bezier[^1].Place;
        if (_isRational || _degree > 3)
            AddFitted(segments, bezier, 0, 1, 0);
        else if (_degree == 1)
            segments.Add(new StraightSegment(start, end));
        else if (_degree == 2)
            segments.Add(CubicSegment.FromQuadratic(start, bezier[1].Place, end));
        else
            segments.Add(new CubicSegment(start, bezier[1].Place, bezier[2].Place, end));
    }

    private void AddFitted(ImmutableArray<CurveSegment>.Builder segments, Weighted[] bezier, double from, double to, int depth)
    {
        CubicSegment cubic = Hermite(bezier, from, to);
        if (depth < DeepestSplit && !IsNear(cubic, bezier, from, to))
        {
            double middle = (from + to) / 2;
            AddFitted(segments, bezier, from, middle, depth + 1);
            AddFitted(segments, bezier, middle, to, depth + 1);
            return;
        }
        segments.Add(segments.Count > 0 ? cubic with { Start = segments[^1].End } : cubic);
    }

    private bool IsNear(CubicSegment cubic, Weighted[] bezier, double from, double to)
    {
        foreach (double ratio in new[] { 0.25, 0.5, 0.75 })
        {
            if ((cubic.PointAt(ratio) - Place(bezier, from + (to - from) * ratio)).NormMillimeters > _tolerance)
                return false;
        }
        return true;
    }

    private static CubicSegment Hermite(Weighted[] bezier, double from, double to)
    {
        (CurvePoint start, CurvePoint leaving) = PlaceAndSpeed(bezier, from);
        (CurvePoint end, CurvePoint arriving) = PlaceAndSpeed(bezier, to);
        double third = (to - from) / 3;
        return new CubicSegment(start, start + leaving * third, end - arriving * third, end);
    }

    private static CurvePoint Place(Weighted[] bezier, double parameter) => PlaceAndSpeed(bezier, parameter).Place;

    private static (CurvePoint Place, CurvePoint Speed) PlaceAndSpeed(Weighted[] bezier, double parameter)
    {
        Weighted[] values = [.. bezier];
        int degree = bezier.Length - 1;
        for (int round = 1; round < degree; round++)
        {
            for (int i = 0; i <= degree - round; i++)
                values[i] = Weighted.Between(values[i], values[i + 1], parameter);
        }
        Weighted at = Weighted.Between(values[0], values[1], parameter);
        Weighted speed = values[1].Minus(values[0]).Times(degree);
        CurvePoint place = at.Place;
        CurvePoint slope = (new CurvePoint(speed.X, speed.Y) - place * speed.Weight) * (1 / at.Weight);
        return (place, slope);
    }

    /// <summary>A point times its weight.</summary>
    private readonly record struct Weighted(double X, double Y, double Weight)
    {
        public CurvePoint Place => new(X / Weight, Y / Weight);

        public static Weighted Of(CurvePoint place, double weight) => new(place.XMillimeters * weight, place.YMillimeters * weight, weight);

        public static Weighted Between(Weighted from, Weighted to, double ratio) =>
            new(from.X + (to.X - from.X) * ratio, from.Y + (to.Y - from.Y) * ratio, from.Weight + (to.Weight - from.Weight) * ratio);

        public Weighted Minus(Weighted other) => new(X - other.X, Y - other.Y, Weight - other.Weight);

        public Weighted Times(double factor) => new(X * factor, Y * factor, Weight * factor);
    }
}
