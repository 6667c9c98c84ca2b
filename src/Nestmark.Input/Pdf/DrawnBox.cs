using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>Recognizes drawn rectangles.</summary>
internal static class DrawnBox
{
    private const double Near = 0.05;

    /// <summary>Width and height of an upright closed rectangle; <c>null</c> for anything else.</summary>
    public static (double WidthMillimeters, double HeightMillimeters)? UprightRectangle(SubPath run)
    {
        if (Sides(run) is not CurvePoint[] sides)
            return null;
        bool isUpright = sides.All(side => Math.Abs(side.XMillimeters) < Near || Math.Abs(side.YMillimeters) < Near);
        return isUpright ? (sides.Max(side => Math.Abs(side.XMillimeters)), sides.Max(side => Math.Abs(side.YMillimeters))) : null;
    }

    /// <summary>The two sides of a closed rectangle, however it is turned; <c>null</c> for anything else.</summary>
    public static (double FirstMillimeters, double SecondMillimeters)? Rectangle(SubPath run)
    {
        if (Sides(run) is not CurvePoint[] sides)
            return null;
        (double first, double second) = (sides[0].NormMillimeters, sides[1].NormMillimeters);
        double across = sides[0].XMillimeters * sides[1].XMillimeters + sides[0].YMillimeters * sides[1].YMillimeters;
        bool isRectangle = Math.Abs(across) <= Near * Math.Max(first, second) && (sides[0] + sides[2]).NormMillimeters <= Near && (sides[1] + sides[3]).NormMillimeters <= Near;
        return isRectangle ? (first, second) : null;
    }

    private static CurvePoint[]? Sides(SubPath run)
    {
        if (run.Segments.Length is < 3 or > 4 || run.Segments.Any(segment => segment is not StraightSegment) || (run.Segments.Length == 3 && run.Form == SubPathForm.Open))
            return null;
        List<CurvePoint> sides = [.. run.Segments.Select(segment => segment.End - segment.Start)];
        if (run.GapMillimeters > Near)
            sides.Add(run.Start - run.End);
        return sides.Count == 4 ? [.. sides] : null;
    }
}
