using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;

namespace Nestmark.Pieces.Drafting;

/// <summary>One of the like panels of a circle skirt: the piece of a ring between two edges.</summary>
internal sealed record CirclePanel(CircleMeasures Measures, int Panels, double WaistRadiusMillimeters)
{
    /// <summary>Angle of one panel, between its seam lines or its cut edges.</summary>
    public double Degrees => Measures.CircleRatio * 360 / Panels;

    /// <summary>Radius of the hem line.</summary>
    public double HemRadiusMillimeters => WaistRadiusMillimeters + Measures.SkirtLength.TotalMillimeters;

    /// <summary>Length of the sewn hem line, all panels together.</summary>
    public double HemMillimeters => Panels * HemRadiusMillimeters * (Degrees * Math.PI / 180 - 2 * Inset(HemRadiusMillimeters));

    public static CirclePanel Of(CircleMeasures measures, int panels) => new(measures, panels, measures.Edges == CircleEdges.SeamLine
        ? CircleRadii.WaistMillimeters(measures.Waist, measures.CircleRatio)
        : CircleRadii.SeamWaistMillimeters(measures.Waist, measures.CircleRatio, panels, measures.Seam));

    /// <summary>The seam line about the middle of the circle, turned as it lies.</summary>
    public CirclePanelOutline OutlineFor(CirclePanelLay lay)
    {
        double inner = Inset(WaistRadiusMillimeters) * 180 / Math.PI;
        double outer = Inset(HemRadiusMillimeters) * 180 / Math.PI;
        double half = Degrees / 2;
        // With the grain along an edge it is the first seam edge that lies along x.
        double turn = lay == CirclePanelLay.EdgeAlongGrain ? half : 0;
        (double Inner, double Outer) start = lay == CirclePanelLay.HalfOnFold ? (0, 0) : (inner - half + turn, outer - half + turn);
        (double Inner, double Outer) end = (half - inner + turn, half - outer + turn);
        return Between(start, end, lay == CirclePanelLay.HalfOnFold);
    }

    private CirclePanelOutline Between((double Inner, double Outer) start, (double Inner, double Outer) end, bool onFold)
    {
        CurvePoint waistStart = At(WaistRadiusMillimeters, start.Inner);
        CurvePoint hemStart = At(HemRadiusMillimeters, start.Outer);
        CurvePoint hemEnd = At(HemRadiusMillimeters, end.Outer);
        CurvePoint waistEnd = At(WaistRadiusMillimeters, end.Inner);
        ImmutableArray<OutlineVertex> vertices = Flattening.Closed(
        [
            new StraightSegment(waistStart, hemStart),
            Arc(hemStart, hemEnd, HemRadiusMillimeters, start.Outer, end.Outer),
            new StraightSegment(hemEnd, waistEnd),
            Arc(waistEnd, waistStart, WaistRadiusMillimeters, end.Inner, start.Inner),
        ]);
        Point[] corners = [waistStart.Rounded(), hemStart.Rounded(), hemEnd.Rounded(), waistEnd.Rounded()];
        ImmutableArray<OutlineVertex> marked = [.. vertices.Select(vertex => corners.Contains(vertex.Point) ? vertex with { Kind = VertexKind.Marked } : vertex)];
        return new CirclePanelOutline(marked, corners[1], corners[3], onFold ? new Segment(corners[0], corners[1]) : null);
    }

    private double Inset(double radiusMillimeters) => Measures.Edges == CircleEdges.CutLine ? CircleRadii.InsetRadians(Measures.Seam, radiusMillimeters) : 0;

    private static CurvePoint At(double radiusMillimeters, double degrees)
    {
        Angle angle = Angle.FromDegrees(degrees);
        return new CurvePoint(radiusMillimeters * angle.CosineRatio, radiusMillimeters * angle.SineRatio);
    }

    private static ArcSegment Arc(CurvePoint start, CurvePoint end, double radiusMillimeters, double startDegrees, double endDegrees) => new(start, end)
    {
        Center = default,
        CosineAxis = new CurvePoint(radiusMillimeters, 0),
        SineAxis = new CurvePoint(0, radiusMillimeters),
        StartDegrees = startDegrees,
        SweepDegrees = endDegrees - startDegrees,
    };
}
