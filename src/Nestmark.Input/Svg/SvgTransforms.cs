using Nestmark.Geometry;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Svg;

/// <summary>Reads transform attributes: a list of maps, the rightmost applied first.</summary>
internal static class SvgTransforms
{
    /// <summary>The map of an attribute's text; no text leaves everything where it is.</summary>
    public static Reading<AffineMap> Read(string? text)
    {
        AffineMap map = AffineMap.Identity;
        string rest = (text ?? "").Trim();
        while (rest.Length > 0)
        {
            int open = rest.IndexOf('(', StringComparison.Ordinal);
            int close = rest.IndexOf(')', StringComparison.Ordinal);
            AffineMap? next = open > 0 && close > open && SvgLengths.Numbers(rest[(open + 1)..close]) is double[] numbers
                ? One(rest[..open].Trim(), numbers)
                : null;
            if (next is null)
                return new(default, SvgFaults.BadTransform(text!));
            map = map.After(next.Value);
            rest = rest[(close + 1)..].TrimStart(' ', ',', '\t', '\n', '\r');
        }
        return new(map, Math.Abs(map.DeterminantRatio) < 1e-12 ? SvgFaults.FlatTransform() : null);
    }

    private static AffineMap? One(string name, double[] numbers) => (name, numbers) switch
    {
        ("matrix", [double a, double b, double c, double d, double e, double f]) => new AffineMap(a, c, b, d, e, f),
        ("translate", [double x]) => AffineMap.Shift(x, 0),
        ("translate", [double x, double y]) => AffineMap.Shift(x, y),
        ("scale", [double factor]) => AffineMap.Scale(factor, factor),
        ("scale", [double x, double y]) => AffineMap.Scale(x, y),
        ("rotate", [double degrees]) => Turn(degrees),
        ("rotate", [double degrees, double x, double y]) => AffineMap.Shift(x, y).After(Turn(degrees)).After(AffineMap.Shift(-x, -y)),
        ("skewX", [double degrees]) => new AffineMap(1, Tangent(degrees), 0, 1, 0, 0),
        ("skewY", [double degrees]) => new AffineMap(1, 0, Tangent(degrees), 1, 0, 0),
        _ => null,
    };

    private static AffineMap Turn(double degrees) => AffineMap.Turn(Angle.FromDegrees(degrees % 360));

    private static double Tangent(double degrees)
    {
        Angle angle = Angle.FromDegrees(degrees % 360);
        return angle.CosineRatio == 0 ? double.NaN : angle.SineRatio / angle.CosineRatio;
    }
}
