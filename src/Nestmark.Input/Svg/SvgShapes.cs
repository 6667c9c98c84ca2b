using System.Collections.Immutable;
using System.Xml.Linq;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Svg;

/// <summary>Turns shape elements into runs of segments, in the element's own units.</summary>
/// <remarks>SVG 2, chapter Basic Shapes; references/formats.md 3.4.</remarks>
internal static class SvgShapes
{
    /// <summary>Whether an element of this name is a shape.</summary>
    public static bool IsShape(string name) => name is "path" or "rect" or "circle" or "ellipse" or "polygon" or "polyline" or "line";

    /// <summary>The runs of a shape element; none when it draws nothing.</summary>
    public static Reading<ImmutableArray<SubPath>> Read(XElement element) => element.Name.LocalName switch
    {
        "path" => PathDataReader.Read(element.Attribute("d")?.Value ?? ""),
        "rect" => Rectangle(element),
        "circle" => Ellipse(element, "r", "r"),
        "ellipse" => Ellipse(element, "rx", "ry"),
        "polygon" => Points(element, SubPathForm.Closed),
        "polyline" => Points(element, SubPathForm.Open),
        _ => Line(element),
    };

    private static Reading<ImmutableArray<SubPath>> Line(XElement element)
    {
        (double[] ends, Fault? fault) = Lengths(element, "x1", "y1", "x2", "y2");
        return fault is null
            ? new(Polyline([new(ends[0], ends[1]), new(ends[2], ends[3])], SubPathForm.Open), null)
            : new(default, fault);
    }

    private static Reading<ImmutableArray<SubPath>> Points(XElement element, SubPathForm form)
    {
        SvgScanner scanner = new(element.Attribute("points")?.Value ?? "");
        List<double> numbers = [];
        scanner.SkipBlanks();
        while (!scanner.IsAtEnd)
        {
            if (scanner.Number() is not double number || !(Math.Abs(number) <= SvgLimits.LargestNumber))
                return new(default, SvgFaults.BadPoints(scanner.Position + 1));
            numbers.Add(number);
            scanner.SkipSeparator();
        }
        return new(Polyline([.. numbers.Chunk(2).Where(pair => pair.Length == 2).Select(pair => new CurvePoint(pair[0], pair[1]))], form), null);
    }

    private static ImmutableArray<SubPath> Polyline(CurvePoint[] points, SubPathForm form)
    {
        List<CurveSegment> segments = [];
        CurvePoint[] run = form == SubPathForm.Closed && points.Length > 0 ? [.. points, points[0]] : points;
        for (int i = 0; i + 1 < run.Length; i++)
        {
            if (run[i] != run[i + 1])
                segments.Add(new StraightSegment(run[i], run[i + 1]));
        }
        return segments.Count == 0 ? [] : [new SubPath([.. segments], form)];
    }

    private static Reading<ImmutableArray<SubPath>> Ellipse(XElement element, string radiusX, string radiusY)
    {
        (double[] numbers, Fault? fault) = Lengths(element, "cx", "cy", radiusX, radiusY);
        fault ??= BelowZero(element, radiusX, numbers[2]) ?? BelowZero(element, radiusY, numbers[3]);
        if (fault is not null)
            return new(default, fault);
        if (numbers[2] == 0 || numbers[3] == 0)
            return new([], null);
        ArcSegment ellipse = ArcSegment.Ellipse(new(numbers[0], numbers[1]), numbers[2], numbers[3]);
        return new([new SubPath([ellipse], SubPathForm.Closed)], null);
    }

    private static Reading<ImmutableArray<SubPath>> Rectangle(XElement element)
    {
        (double[] numbers, Fault? fault) = Lengths(element, "x", "y", "width", "height");
        (double[] radii, Fault? radiusFault) = Lengths(element, "rx", "ry");
        fault ??= radiusFault ?? BelowZero(element, "width", numbers[2]) ?? BelowZero(element, "height", numbers[3]);
        if (fault is not null)
            return new(default, fault);
        (double x, double y, double width, double height) = (numbers[0], numbers[1], numbers[2], numbers[3]);
        if (width == 0 || height == 0)
            return new([], null);
        double rx = Math.Clamp(HasRadius(element, "rx") ? radii[0] : radii[1], 0, width / 2);
        double ry = Math.Clamp(HasRadius(element, "ry") ? radii[1] : radii[0], 0, height / 2);
        if (rx == 0 || ry == 0)
            return new(Polyline([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], SubPathForm.Closed), null);
        return new([Rounded(new(x, y), new(x + width, y + height), new(rx, ry))], null);
    }

    private static bool HasRadius(XElement element, string name) => element.Attribute(name) is { Value: not "auto" };

    private static SubPath Rounded(CurvePoint low, CurvePoint high, CurvePoint radius)
    {
        (double rx, double ry) = (radius.XMillimeters, radius.YMillimeters);
        CurvePoint[] runs =
        [
            new(low.XMillimeters + rx, low.YMillimeters), new(high.XMillimeters - rx, low.YMillimeters),
            new(high.XMillimeters, low.YMillimeters + ry), new(high.XMillimeters, high.YMillimeters - ry),
            new(high.XMillimeters - rx, high.YMillimeters), new(low.XMillimeters + rx, high.YMillimeters),
            new(low.XMillimeters, high.YMillimeters - ry), new(low.XMillimeters, low.YMillimeters + ry),
        ];
        List<CurveSegment> segments = [];
        for (int i = 0; i < runs.Length; i += 2)
        {
            if (runs[i] != runs[i + 1])
                segments.Add(new StraightSegment(runs[i], runs[i + 1]));
            segments.Add(Corner(runs[i + 1], runs[(i + 2) % runs.Length], radius));
        }
        return new SubPath([.. segments], SubPathForm.Closed);
    }

    private static CurveSegment Corner(CurvePoint start, CurvePoint end, CurvePoint radius) => new EndpointArc
    {
        Start = start,
        End = end,
        RadiusXMillimeters = radius.XMillimeters,
        RadiusYMillimeters = radius.YMillimeters,
        RotationDegrees = 0,
        Size = ArcSize.Small,
        Sense = ArcSense.Rising,
    }.ToSegment();

    private static (double[] Numbers, Fault? Fault) Lengths(XElement element, params string[] attributes)
    {
        Fault? fault = null;
        double[] numbers = new double[attributes.Length];
        for (int i = 0; i < attributes.Length; i++)
        {
            if (element.Attribute(attributes[i])?.Value == "auto")
                continue;
            Reading<double> length = SvgLengths.InUserUnits(element, attributes[i], 0);
            fault ??= length.Fault;
            numbers[i] = length.Value;
        }
        return (numbers, fault);
    }

    private static Fault? BelowZero(XElement element, string attribute, double number) =>
        number < 0 ? SvgFaults.BelowZero(attribute, element.Attribute(attribute)!.Value) : null;
}
