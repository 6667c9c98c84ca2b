using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;

namespace Nestmark.Pieces.Drafting;

/// <summary>Drafts a full circle skirt without a seam: a round piece with the waist to cut out drawn on it, and a slit to get in by.</summary>
/// <remarks>
/// That is how the cloth is cut: along the hem, then along the waist inside. Nothing else is laid in the waist, so the piece counts as a full disc.
/// On folded cloth it is half a disc with its diameter on the fold. It needs a usable width of twice the hem radius (references/trade.md 9.1).
/// </remarks>
internal static class CircleRing
{
    /// <summary>Length of the slit where none is given: 20 cm, common practice for a zip in a waist, no source.</summary>
    private static readonly Length UsualOpening = Length.FromCentimeters(20);

    /// <summary>Whether a skirt is a whole circle of one panel.</summary>
    public static bool IsMeant(CircleMeasures measures, int panels) => panels == 1 && measures.CircleRatio >= 1;

    /// <summary>Why it cannot be drafted on cloth of any width, or <c>null</c>.</summary>
    public static DraftingResult? Refusal(CircleMeasures measures, DraftingCloth cloth)
    {
        if (RadiusMillimeters(measures) <= measures.WaistSeam.TotalMillimeters)
            return DraftingResult.Refused("The waist allowance fills the whole circle of the waist.", "Write a smaller waist_seam.");
        return OpeningOf(measures) >= measures.SkirtLength
            ? DraftingResult.Refused($"The opening of {cloth.Say(OpeningOf(measures))} slits the skirt to its hem.", "Write a shorter opening, as opening: 12 cm, or panels: 2.")
            : null;
    }

    /// <summary>The ring as it lies on a cloth.</summary>
    public static DraftedShape Shape(CircleMeasures measures, DraftingCloth cloth)
    {
        double waist = RadiusMillimeters(measures);
        double hem = waist + measures.SkirtLength.TotalMillimeters;
        ImmutableArray<OutlineVertex> outline = Disc(hem, cloth.IsFolded);
        return new DraftedShape
        {
            Outline = outline,
            Cut = new CutQuantity(1, cloth.IsFolded ? CutKind.OnFold : CutKind.Copies),
            FoldLine = cloth.IsFolded ? new Segment(Point.FromMillimeters(-hem, 0), Point.FromMillimeters(hem, 0)) : null,
            Edges = cloth.IsFolded ? EdgeRoles.Of(outline, [(Point.FromMillimeters(hem, 0), measures.Hem)]) : [new EdgeAllowance("A", "A", measures.Hem, AllowanceEnds.Mitred)],
            Lines = Lines(measures, waist, cloth),
            Said = Said(measures, waist, hem, cloth),
        };
    }

    private static double RadiusMillimeters(CircleMeasures measures) => CircleRadii.WaistMillimeters(measures.Waist, measures.CircleRatio);

    private static Length OpeningOf(CircleMeasures measures) => measures.Opening ?? UsualOpening;

    private static ImmutableArray<OutlineVertex> Disc(double radiusMillimeters, bool isHalf)
    {
        CurvePoint start = new(radiusMillimeters, 0);
        if (!isHalf)
            return Flattening.Closed([ArcSegment.Circle(default, radiusMillimeters)]);
        CurvePoint end = new(-radiusMillimeters, 0);
        return [.. Flattening.Closed([Arc(start, end, radiusMillimeters, 180), new StraightSegment(end, start)])
            .Select(vertex => vertex.Point.Y == 0 ? vertex with { Kind = VertexKind.Marked } : vertex)];
    }

    private static ImmutableArray<PieceLine> Lines(CircleMeasures measures, double waistMillimeters, DraftingCloth cloth)
    {
        double cut = waistMillimeters - measures.WaistSeam.TotalMillimeters;
        double end = waistMillimeters + OpeningOf(measures).TotalMillimeters;
        // On the fold the slit lies on the fold; else it runs across the grain, clear of the grainline.
        PieceLine slit = new(
            $"slit {cloth.Say(OpeningOf(measures))} below the waist line",
            cloth.IsFolded ? [Point.FromMillimeters(-cut, 0), Point.FromMillimeters(-end, 0)] : [Point.FromMillimeters(0, cut), Point.FromMillimeters(0, end)]);
        // The seam line lies beside the line to cut and goes without words, which would lie on each other.
        return measures.WaistSeam == Length.Zero
            ? [Round("cut out the waist", cut, cloth), slit]
            : [Round("cut out the waist", cut, cloth), Round("", waistMillimeters, cloth), slit];
    }

    private static PieceLine Round(string label, double radiusMillimeters, DraftingCloth cloth)
    {
        // Words stand at the middle of a line: at the bottom of a circle that begins at its top.
        CurvePoint start = cloth.IsFolded ? new(radiusMillimeters, 0) : new(0, radiusMillimeters);
        CurvePoint end = cloth.IsFolded ? new(-radiusMillimeters, 0) : start;
        ArcSegment arc = Arc(start, end, radiusMillimeters, cloth.IsFolded ? 180 : 360) with { StartDegrees = cloth.IsFolded ? 0 : 90 };
        return new PieceLine(label, [.. Flattening.Open([arc])]);
    }

    private static ArcSegment Arc(CurvePoint start, CurvePoint end, double radiusMillimeters, double sweepDegrees) => new(start, end)
    {
        Center = default,
        CosineAxis = new CurvePoint(radiusMillimeters, 0),
        SineAxis = new CurvePoint(0, radiusMillimeters),
        StartDegrees = 0,
        SweepDegrees = sweepDegrees,
    };

    private static string Said(CircleMeasures measures, double waistMillimeters, double hemMillimeters, DraftingCloth cloth)
    {
        string cut = cloth.Say(Length.FromMillimeters(waistMillimeters) - measures.WaistSeam);
        return $"1 ring without a seam{(cloth.IsFolded ? ", cut on the fold" : "")}, waist radius {cloth.Say(Length.FromMillimeters(waistMillimeters))}, "
            + $"hem radius {cloth.Say(Length.FromMillimeters(hemMillimeters))}; the hem is {cloth.Say(Length.FromMillimeters(2 * Math.PI * hemMillimeters))} round. "
            + $"Cut the waist out along the inner line, {cut} from the middle, and slit it {cloth.Say(OpeningOf(measures))} for the opening.";
    }
}
