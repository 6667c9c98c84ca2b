using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>The smooth curve through given points: cubic pieces, bending without a jump, free at its ends, parameter by chord length.</summary>
internal static class FittedCurve
{
    /// <summary>Segments head to tail through every point. Points one after the other in the same place count once.</summary>
    /// <param name="points">Two or more.</param>
    public static ImmutableArray<CurveSegment> Through(IReadOnlyList<CurvePoint> points)
    {
        List<CurvePoint> places = [];
        foreach (CurvePoint point in points)
        {
            if (places.Count == 0 || (point - places[^1]).NormMillimeters > 1e-9)
                places.Add(point);
        }
        if (places.Count < 2)
            return [];
        double[] steps = [.. places.Skip(1).Select((place, i) => (place - places[i]).NormMillimeters)];
        CurvePoint[] slopes = Slopes(places, steps);
        return
        [
            .. steps.Select((step, i) => new CubicSegment(
                places[i], places[i] + slopes[i] * (step / 3), places[i + 1] - slopes[i + 1] * (step / 3), places[i + 1])),
        ];
    }

    /// <summary>The slope at each point, from the equations that make the bending equal on both sides (tridiagonal, solved by elimination).</summary>
    private static CurvePoint[] Slopes(List<CurvePoint> places, double[] steps)
    {
        int last = places.Count - 1;
        double[] upper = new double[places.Count];
        CurvePoint[] slopes = new CurvePoint[places.Count];
        (upper[0], slopes[0]) = (0.5, Secant(0) * 1.5);
        for (int i = 1; i <= last; i++)
        {
            // Ends without bending: 2·s(end) + s(next) = 3·secant.
            double before = i == last ? 1 : 1 / steps[i - 1];
            double middle = i == last ? 2 : 2 * (1 / steps[i - 1] + 1 / steps[i]);
            CurvePoint right = i == last ? Secant(i - 1) * 3 : Secant(i - 1) * (3 / steps[i - 1]) + Secant(i) * (3 / steps[i]);
            double pivot = middle - before * upper[i - 1];
            upper[i] = i == last ? 0 : 1 / steps[i] / pivot;
            slopes[i] = (right - slopes[i - 1] * before) * (1 / pivot);
        }
        for (int i = last - 1; i >= 0; i--)
            slopes[i] -= slopes[i + 1] * upper[i];
        return slopes;

        CurvePoint Secant(int i) => (places[i + 1] - places[i]) * (1 / steps[i]);
    }
}
