using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>Drafts skirts cut from a part of a circle, in as many like panels as the cloth's width asks.</summary>
/// <remarks>
/// Of one count of panels these are tried in order: the grain down the middle of the panel, the grain along one edge (which puts the edge on
/// the selvage), and on folded cloth half a panel with its middle on the fold. A whole circle in one panel is a <see cref="CircleRing"/>.
/// </remarks>
public static class CircleSkirt
{
    private const int MostPanels = 24;
    private const double WidestPanelDegrees = 270;

    /// <summary>The panel and how often it is cut.</summary>
    public static DraftingResult Draft(CircleMeasures measures, DraftingCloth cloth)
    {
        int least = Math.Max(1, (int)Math.Ceiling(measures.CircleRatio * 360 / WidestPanelDegrees - 1e-9));
        if (measures.Panels is { } asked)
        {
            if (Refusal(measures, asked, least, cloth) is { } refusal)
                return refusal;
            return Best(measures, asked, cloth) is { } shape ? DraftingResult.Of(shape) : TooLong(measures, asked, cloth);
        }
        if (measures.Opening is not null)
            return OpeningInSeam();
        for (int panels = least; panels <= MostPanels; panels++)
        {
            if (Best(measures, panels, cloth) is { } shape)
                return DraftingResult.Of(shape);
        }
        return TooLong(measures, MostPanels, cloth);
    }

    /// <summary>The longest skirt of some panels that the cloth bears, rounded down to a tenth of a millimeter; zero when none does.</summary>
    public static Length LongestLength(CircleMeasures measures, int panels, DraftingCloth cloth)
    {
        long good = 0;
        long bad = measures.SkirtLength.Micrometers / 100;
        while (Fits(bad) && bad < 100_000)
            (good, bad) = (bad, bad * 2);
        while (bad - good > 1)
        {
            long middle = (good + bad) / 2;
            (good, bad) = Fits(middle) ? (middle, bad) : (good, middle);
        }
        return Length.FromMicrometers(good * 100);

        bool Fits(long tenths) => tenths > 0 && Best(measures with { SkirtLength = Length.FromMicrometers(tenths * 100) }, panels, cloth) is not null;
    }

    private static DraftingResult? Refusal(CircleMeasures measures, int panels, int least, DraftingCloth cloth)
    {
        if (CircleRing.IsMeant(measures, panels))
            return CircleRing.Refusal(measures, cloth);
        return panels < least ? TooFew(least) : measures.Opening is null ? null : OpeningInSeam();
    }

    private static DraftedShape? Best(CircleMeasures measures, int panels, DraftingCloth cloth)
    {
        if (CircleRing.IsMeant(measures, panels))
        {
            DraftedShape ring = CircleRing.Shape(measures, cloth);
            return EdgeRoles.DepthOf(ring, measures.Seam) is { } deep && deep <= cloth.Depth ? ring : null;
        }
        CirclePanel panel = CirclePanel.Of(measures, panels);
        List<DraftedShape> ways = [];
        if (!cloth.IsFolded || panels % 2 == 0)
        {
            ways.Add(Shape(panel, CirclePanelLay.MiddleAlongGrain, new CutQuantity(panels, CutKind.Copies), cloth));
            ways.Add(Shape(panel, CirclePanelLay.EdgeAlongGrain, new CutQuantity(panels, CutKind.Copies), cloth));
        }
        if (cloth.IsFolded)
            ways.Add(Shape(panel, CirclePanelLay.HalfOnFold, new CutQuantity(panels, CutKind.OnFold), cloth));
        return ways.Find(way => EdgeRoles.DepthOf(way, measures.Seam) is { } depth && depth <= cloth.Depth);
    }

    private static DraftedShape Shape(CirclePanel panel, CirclePanelLay lay, CutQuantity cut, DraftingCloth cloth)
    {
        CirclePanelOutline outline = panel.OutlineFor(lay);
        return new DraftedShape
        {
            Outline = outline.Vertices,
            Cut = cut,
            FoldLine = outline.FoldLine,
            Edges = EdgeRoles.Of(outline.Vertices, [(outline.WaistStart, panel.Measures.WaistSeam), (outline.HemStart, panel.Measures.Hem)]),
            Said = Said(panel, lay, cloth),
        };
    }

    private static string Said(CirclePanel panel, CirclePanelLay lay, DraftingCloth cloth)
    {
        string count = panel.Panels == 1 ? "1 panel" : panel.Panels.ToString(CultureInfo.InvariantCulture) + " panels";
        string how = lay switch
        {
            CirclePanelLay.EdgeAlongGrain => ", one edge along the grain",
            CirclePanelLay.HalfOnFold => ", each cut on the fold",
            _ => "",
        };
        string edges = panel.Measures.Edges == CircleEdges.CutLine ? " as cut" : "";
        return $"{count} of {panel.Degrees.ToString("0.##", CultureInfo.InvariantCulture)} degrees{edges}{how}, waist radius {cloth.Say(Length.FromMillimeters(panel.WaistRadiusMillimeters))}, "
            + $"hem radius {cloth.Say(Length.FromMillimeters(panel.HemRadiusMillimeters))}; the hem is {cloth.Say(Length.FromMillimeters(panel.HemMillimeters))} round.";
    }

    private static DraftingResult TooFew(int least) => DraftingResult.Refused(
        "A panel of this skirt would be wider than three quarters of a circle, and its allowances would lie on each other.",
        least == 2 ? "Write panels: 2, or leave it out." : $"Write panels: {least.ToString(CultureInfo.InvariantCulture)} or more, or leave it out.");

    private static DraftingResult OpeningInSeam() => DraftingResult.Refused(
        "A skirt with seams opens in one of them and needs no slit.", "Take opening out, or write part: full and panels: 1 for a ring without a seam.");

    private static DraftingResult TooLong(CircleMeasures measures, int panels, DraftingCloth cloth)
    {
        Length longest = LongestLength(measures, panels, cloth);
        string count = panels.ToString(CultureInfo.InvariantCulture) + (panels == 1 ? " panel" : " panels");
        string what = $"A skirt {cloth.Say(measures.SkirtLength)} long in {count} does not fit on a lay {cloth.Say(cloth.Depth)} deep.";
        return DraftingResult.Refused(what, longest > Length.Zero
            ? $"The longest that works is {cloth.Say(longest)}; leave panels out, or take wider cloth."
            : "Take more panels or wider cloth.");
    }
}
