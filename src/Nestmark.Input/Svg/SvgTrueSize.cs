using System.Xml.Linq;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Outlines;

namespace Nestmark.Input.Svg;

/// <summary>The true size of a drawing: what it says itself, corrected by the job's scale and checked against its test square.</summary>
/// <remarks>A drawing in px has no size of its own; then the job must say its units in an inch, a percentage of the usual 96, or a test square.</remarks>
internal sealed class SvgTrueSize(XElement root, SvgProblems problems, DrawingSettings settings)
{
    private const string SquareWord = "test-square";
    private const double UsualUnitsPerInch = 96;

    /// <summary>The map from the root's user units to millimeters, y down; <c>null</c> after an error.</summary>
    /// <param name="measure">Sides of an element's box under a map; <c>null</c> when it draws nothing.</param>
    public AffineMap? Map(Func<XElement, AffineMap, (double WidthMillimeters, double HeightMillimeters)?> measure)
    {
        Reading<AffineMap> own = SvgScale.Of(root);
        if (own.Fault is not null && SvgScale.SaysTrueSize(root))
            return Fail(own.Fault);
        if (own.Fault is null && settings.UnitsPerInchRatio is not null)
        {
            settings.Error("scale", ScaleFaults.DpiWithTrueSize());
            return null;
        }
        XElement? square = settings.TestSquareSide is null ? null : Square();
        if (settings.TestSquareSide is not null && square is null)
            return null;
        bool isKnown = own.Fault is null || settings.UnitsPerInchRatio is not null || settings.ScaleRatio is not null;
        if (!isKnown && square is null)
            return Fail(own.Fault!);
        double ratio = settings.ScaleRatio ?? 1;
        AffineMap map = own.Fault is null ? AffineMap.Scale(ratio, ratio).After(own.Value) : InUnits((settings.UnitsPerInchRatio ?? UsualUnitsPerInch) / ratio);
        return square is null ? map : Checked(square, map, measure(square, map), isKnown);
    }

    private AffineMap? Checked(XElement square, AffineMap map, (double Width, double Height)? box, bool isKnown)
    {
        Length side = settings.TestSquareSide!.Value;
        (double width, double height) = box ?? (0, 0);
        if (!isKnown && SquareCheck.IsSquare(width, height))
        {
            double factor = side.TotalMillimeters / ((width + height) / 2);
            settings.Note("test_square", ScaleFaults.SquareGivesScale(UsualUnitsPerInch / factor));
            return AffineMap.Scale(factor, factor).After(map);
        }
        if (SquareCheck.FaultOf(width, height, side, settings.ScaleRatio ?? 1) is not Fault fault)
            return map;
        problems.Error(square, "#" + (square.Attribute("id")?.Value ?? SquareWord), fault);
        return null;
    }

    private XElement? Square()
    {
        XElement? square = root.Descendants().FirstOrDefault(element => settings.TestSquareId.Length > 0
            ? element.Attribute("id")?.Value == settings.TestSquareId
            : element.Attribute("id")?.Value == SquareWord || (element.Attribute("class")?.Value ?? "").Split((char[]?)null).Contains(SquareWord));
        if (square is null)
            settings.Error("test_square", ScaleFaults.NoSquare(settings.TestSquareId.Length > 0 ? $"no element has the id {settings.TestSquareId}" : $"no element has the class or id {SquareWord}"));
        return square;
    }

    private AffineMap InUnits(double unitsPerInch)
    {
        double perPixel = 25.4 / unitsPerInch;
        AffineMap pixels = SvgScale.FitInPixels(root) ?? AffineMap.Identity;
        return AffineMap.Scale(perPixel, perPixel).After(pixels);
    }

    private AffineMap? Fail(Fault fault)
    {
        problems.Error(root, "", fault);
        return null;
    }
}
