namespace Nestmark.Geometry.Curves;

/// <summary>Flattens one cubic: halved until each part is near enough to its chord, or to the two tangents at its ends.</summary>
/// <remarks>
/// The curve is first split where it changes its turning sense, so each part is convex: a convex part lies in the triangle of its chord and
/// its end tangents. A chord is off by at most 3/4 of the control points' distance (references/formats.md 2.6 gives the same constant);
/// the tangents' meeting point is off by at most its distance to the curve's middle.
/// </remarks>
internal static class CubicFlattening
{
    private const int DeepestSplit = 18;

    public static IEnumerable<CurvePoint> PointsBetween(CubicSegment cubic, TangentTurns tangents, double toleranceMillimeters)
    {
        List<Cell> cells = [];
        CubicSegment rest = cubic;
        double done = 0;
        foreach (double inflection in Inflections(cubic))
        {
            (CubicSegment before, rest) = rest.SplitAt((inflection - done) / (1 - done));
            Halve(before, tangents, toleranceMillimeters, 0, cells);
            done = inflection;
        }
        Halve(rest, tangents, toleranceMillimeters, 0, cells);
        return PointsOf(cells);
    }

    private static IEnumerable<CurvePoint> PointsOf(List<Cell> cells)
    {
        for (int i = 0; i < cells.Count; i++)
        {
            // Between two tangent points the curve's own point lies on the line that joins them.
            if (i > 0 && !(cells[i].Corner is not null && cells[i - 1].Corner is not null))
                yield return cells[i].Start;
            if (cells[i].Corner is CurvePoint corner)
                yield return corner;
        }
    }

    private static void Halve(CubicSegment part, TangentTurns tangents, double tolerance, int depth, List<Cell> cells)
    {
        bool wantsTangents = tangents != TangentTurns.None && TurnOf(part) == tangents;
        CurvePoint? corner = wantsTangents ? TangentCorner(part, tolerance) : null;
        if (corner is not null || depth == DeepestSplit || IsFlat(part, wantsTangents ? 1e-4 : tolerance))
        {
            cells.Add(new Cell(part.Start, corner));
            return;
        }
        (CubicSegment before, CubicSegment after) = part.SplitAt(0.5);
        Halve(before, tangents, tolerance, depth + 1, cells);
        Halve(after, tangents, tolerance, depth + 1, cells);
    }

    private static TangentTurns TurnOf(CubicSegment part)
    {
        double side = CurvePoint.Cross(part.End - part.Start, part.PointAt(0.5) - part.Start);
        return side < 0 ? TangentTurns.Left : TangentTurns.Right;
    }

    private static bool IsFlat(CubicSegment part, double tolerance) =>
        0.75 * Math.Max(ToChord(part, part.StartControl), ToChord(part, part.EndControl)) <= tolerance;

    private static double ToChord(CubicSegment part, CurvePoint control)
    {
        CurvePoint chord = part.End - part.Start;
        CurvePoint offset = control - part.Start;
        double along = CurvePoint.Dot(chord, chord);
        double ratio = along == 0 ? 0 : Math.Clamp(CurvePoint.Dot(offset, chord) / along, 0, 1);
        return (offset - chord * ratio).NormMillimeters;
    }

    private static CurvePoint? TangentCorner(CubicSegment part, double tolerance)
    {
        CurvePoint chord = part.End - part.Start;
        CurvePoint leaving = FirstLong(part.StartControl - part.Start, part.EndControl - part.Start, chord);
        CurvePoint arriving = FirstLong(part.End - part.EndControl, part.End - part.StartControl, chord);
        double spread = CurvePoint.Cross(leaving, arriving);
        if (Math.Abs(spread) < 1e-9 * leaving.NormMillimeters * arriving.NormMillimeters)
            return null;
        double along = CurvePoint.Cross(chord, arriving) / spread;
        CurvePoint corner = part.Start + leaving * along;
        bool between = along > 0 && CurvePoint.Dot(part.End - corner, arriving) > 0 && CurvePoint.Dot(leaving, arriving) > 0;
        return between && (corner - part.PointAt(0.5)).NormMillimeters <= tolerance ? corner : null;
    }

    private static CurvePoint FirstLong(CurvePoint first, CurvePoint second, CurvePoint third)
    {
        if (first.NormMillimeters > 1e-9)
            return first;
        return second.NormMillimeters > 1e-9 ? second : third;
    }

    private static IEnumerable<double> Inflections(CubicSegment cubic)
    {
        CurvePoint a = cubic.StartControl - cubic.Start;
        CurvePoint b = cubic.EndControl - cubic.StartControl * 2 + cubic.Start;
        CurvePoint c = cubic.End - cubic.EndControl * 3 + cubic.StartControl * 3 - cubic.Start;
        double constant = CurvePoint.Cross(a, b);
        double linear = CurvePoint.Cross(a, c);
        double square = CurvePoint.Cross(b, c);
        return Roots(square, linear, constant).Where(root => root is > 1e-6 and < 1 - 1e-6).Order();
    }

    private static double[] Roots(double square, double linear, double constant)
    {
        if (Math.Abs(square) <= 1e-12 * (Math.Abs(linear) + Math.Abs(constant)))
            return linear == 0 ? [] : [-constant / linear];
        double discriminant = linear * linear - 4 * square * constant;
        if (discriminant < 0)
            return [];
        double half = -0.5 * (linear + Math.CopySign(Math.Sqrt(discriminant), linear));
        return half == 0 ? [0] : [half / square, constant / half];
    }

    private readonly record struct Cell(CurvePoint Start, CurvePoint? Corner);
}
