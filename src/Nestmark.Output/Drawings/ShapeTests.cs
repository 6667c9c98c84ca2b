namespace Nestmark.Output.Drawings;

/// <summary>Rough tests of places on a picture, for labels and pages only: nothing is cut by them.</summary>
internal static class ShapeTests
{
    /// <summary>Whether a place lies inside some rings, even-odd.</summary>
    public static bool IsInside(ReadOnlySpan<(Spot Start, Spot End)> edges, Spot spot)
    {
        bool inside = false;
        foreach ((Spot start, Spot end) in edges)
        {
            if (start.YMillimeters > spot.YMillimeters == end.YMillimeters > spot.YMillimeters)
                continue;
            double ratio = (spot.YMillimeters - start.YMillimeters) / (end.YMillimeters - start.YMillimeters);
            if (start.Toward(end, ratio).XMillimeters > spot.XMillimeters)
                inside = !inside;
        }
        return inside;
    }

    /// <summary>Distance from a place to a line.</summary>
    public static double DistanceMillimeters(Spot start, Spot end, Spot spot)
    {
        double x = end.XMillimeters - start.XMillimeters;
        double y = end.YMillimeters - start.YMillimeters;
        double square = x * x + y * y;
        double ratio = square == 0
            ? 0
            : ((spot.XMillimeters - start.XMillimeters) * x + (spot.YMillimeters - start.YMillimeters) * y) / square;
        return start.Toward(end, Math.Clamp(ratio, 0, 1)).DistanceMillimeters(spot);
    }

    /// <summary>Whether a line meets an area, touching included.</summary>
    public static bool Meets(Area area, Spot start, Spot end)
    {
        double from = 0;
        double to = 1;
        double x = end.XMillimeters - start.XMillimeters;
        double y = end.YMillimeters - start.YMillimeters;
        return Narrow(-x, start.XMillimeters - area.LeftMillimeters, ref from, ref to)
            && Narrow(x, area.RightMillimeters - start.XMillimeters, ref from, ref to)
            && Narrow(-y, start.YMillimeters - area.BottomMillimeters, ref from, ref to)
            && Narrow(y, area.TopMillimeters - start.YMillimeters, ref from, ref to);
    }

    // Keeps the part of the line on the inner side of one edge of the area: Liang and Barsky (1984), parametric line clipping.
    private static bool Narrow(double leaving, double inside, ref double from, ref double to)
    {
        if (leaving == 0)
            return inside >= 0;
        double ratio = inside / leaving;
        if (leaving < 0)
            from = Math.Max(from, ratio);
        else
            to = Math.Min(to, ratio);
        return from <= to;
    }
}
