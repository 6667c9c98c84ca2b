using System.Xml.Linq;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Svg;

/// <summary>What one unit of a drawing is worth: from width and height with units and the viewBox, never guessed.</summary>
/// <remarks>SVG 2, chapter Coordinate Systems; references/formats.md 3.1, true-size rule.</remarks>
internal static class SvgScale
{
    private const double EqualRatio = 1e-5;

    /// <summary>The map from the root's user units to millimeters from the drawing's top left, y down.</summary>
    public static Reading<AffineMap> Of(XElement root)
    {
        double? width = SvgLengths.TrueSize(root.Attribute("width")?.Value);
        double? height = SvgLengths.TrueSize(root.Attribute("height")?.Value);
        string? viewBox = root.Attribute("viewBox")?.Value;
        if (width is null || height is null || viewBox is null)
            return new(default, SvgFaults.NoScale(Missing(root, width, height)));
        Reading<AffineMap> fit = Fit(root, width.Value, height.Value);
        if (fit.Fault is not null)
            return fit;
        (double x, double y) = (fit.Value.XxRatio, fit.Value.YyRatio);
        return Math.Abs(x / y - 1) > EqualRatio ? new(default, SvgFaults.Stretched(x, y)) : fit;
    }

    /// <summary>Whether the drawing says its size in mm, cm or the like and has a viewBox, be they good or not.</summary>
    public static bool SaysTrueSize(XElement root) =>
        SvgLengths.TrueSize(root.Attribute("width")?.Value) is not null && SvgLengths.TrueSize(root.Attribute("height")?.Value) is not null && root.Attribute("viewBox") is not null;

    /// <summary>The map from user units to px of a drawing with width and height in px and a viewBox; <c>null</c> where units are px already.</summary>
    public static AffineMap? FitInPixels(XElement root)
    {
        double width = SvgLengths.InUserUnits(root, "width", 0).Value;
        double height = SvgLengths.InUserUnits(root, "height", 0).Value;
        return width > 0 && height > 0 && Fit(root, width, height) is { Fault: null } fit && root.Attribute("viewBox") is not null
            && Math.Abs(fit.Value.XxRatio / fit.Value.YyRatio - 1) <= EqualRatio ? fit.Value : null;
    }

    /// <summary>The map of an element's viewBox into a box of the given size at the origin; no viewBox leaves everything where it is.</summary>
    public static Reading<AffineMap> Fit(XElement element, double width, double height)
    {
        string? text = element.Attribute("viewBox")?.Value;
        if (text is null)
            return new(AffineMap.Identity, null);
        if (SvgLengths.Numbers(text) is not [double x, double y, > 0 and double boxWidth, > 0 and double boxHeight])
            return new(default, SvgFaults.BadViewBox(text));
        string[] words = (element.Attribute("preserveAspectRatio")?.Value ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        string align = words.FirstOrDefault(word => word != "defer") ?? "xMidYMid";
        (double scaleX, double scaleY) = (width / boxWidth, height / boxHeight);
        if (align != "none")
            scaleX = scaleY = words.Contains("slice") ? Math.Max(scaleX, scaleY) : Math.Min(scaleX, scaleY);
        double shiftX = Share(align, "xMid", "xMax") * (width - boxWidth * scaleX);
        double shiftY = Share(align, "YMid", "YMax") * (height - boxHeight * scaleY);
        return new(new AffineMap(scaleX, 0, 0, scaleY, shiftX - x * scaleX, shiftY - y * scaleY), null);
    }

    private static double Share(string align, string middle, string far)
    {
        if (align.Contains(middle, StringComparison.Ordinal))
            return 0.5;
        return align.Contains(far, StringComparison.Ordinal) ? 1 : 0;
    }

    private static string Missing(XElement root, double? width, double? height)
    {
        if (width is null || height is null)
        {
            string found = Found(root, "width") + " and " + Found(root, "height");
            return found + "; px and % have no fixed size on cloth";
        }
        return "it has no viewBox";
    }

    private static string Found(XElement root, string name) => root.Attribute(name) is { Value: string value }
        ? $"{name}=\"{Quantities.QuantityFaults.Shown(value)}\""
        : $"no {name}";
}
