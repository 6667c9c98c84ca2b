using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Output.Lays;
using Nestmark.Yardage;

namespace Nestmark.Output.Guide;

/// <summary>What the signs on the lay mean; only those that occur.</summary>
internal static class Legend
{
    private const double RowHeight = 5;
    private const double TextSize = 2.4;

    /// <summary>Draws it in rows.</summary>
    /// <returns>Where it ends, counted up the page.</returns>
    public static double Draw(Drawing page, ClothPlan cloth, Spot topLeft, double widthMillimeters)
    {
        Spot at = topLeft;
        foreach ((Action<Drawing, Spot> sign, double signWidth, string words) in EntriesOf(cloth))
        {
            double width = signWidth + 1.5 + new TextLine(words, TextSize).WidthMillimeters;
            if (at.XMillimeters > topLeft.XMillimeters && at.XMillimeters + width > topLeft.XMillimeters + widthMillimeters)
                at = new Spot(topLeft.XMillimeters, at.YMillimeters - RowHeight);
            sign(page, at.Moved(0, -RowHeight + 1));
            page.Text(Role.Label, words, at.Moved(signWidth + 1.5, -RowHeight + 1.7), TextSize);
            at = at.Moved(width + 5, 0);
        }
        return at.YMillimeters - RowHeight - 1;
    }

    private static IEnumerable<(Action<Drawing, Spot> Sign, double Width, string Words)> EntriesOf(ClothPlan cloth)
    {
        Marker marker = cloth.Marker;
        if (marker.Placements.Any(placement => placement.Turn.Facing == Facing.Flipped))
        {
            yield return (DrawPlain, 6, "right side of the piece up");
            yield return (DrawHatched, 6, "hatched: wrong side up, piece turned over");
        }
        if (cloth.Cloth.Nap == Cloths.Nap.None)
            yield return (DrawTwoHeads, 9, "grainline, either way up");
        else
            yield return (DrawOneHead, 9, "grainline, this way only");
        if (marker.Placements.Any(placement => placement.Contact == FoldContact.OnFold))
            yield return (DrawBracket, 8, "this edge on the fold, do not cut it");
        if (marker.Placements.Any(placement => !placement.Piece.Notches.IsEmpty))
            yield return (DrawNotch, 2, "notch");
        if (cloth.Matching is not null)
            yield return (DrawBar, 7, "bars of the print, or where the border begins (broken)");
        if (!ClothFrame.FlawsOf(cloth).IsEmpty)
            yield return (DrawFlaw, 6, "place to avoid");
        if (cloth.Cloth.Selvage > Length.Zero && cloth.Leftovers is null)
            yield return (DrawSelvage, 7, "edge of the selvage, kept free");
    }

    private static void DrawPlain(Drawing page, Spot at) => page.Ring(Role.CuttingLine, new Ink(0.35), BoxAt(at).Corners);

    private static void DrawHatched(Drawing page, Spot at)
    {
        page.Lines(Role.WrongSide, new Ink(0.1, LineStyle.Solid, 0.4), Hatching.Of([[.. BoxAt(at).Corners]], 1.2));
        DrawPlain(page, at);
    }

    private static void DrawOneHead(Drawing page, Spot at)
    {
        page.Line(Role.Grainline, new Ink(0.18), at.Moved(0, 1.6), at.Moved(7, 1.6));
        ArrowHead.Draw(page, Role.Grainline, at.Moved(0, 1.6), at.Moved(9, 1.6), 2);
    }

    private static void DrawTwoHeads(Drawing page, Spot at)
    {
        DrawOneHead(page, at);
        ArrowHead.Draw(page, Role.Grainline, at.Moved(9, 1.6), at.Moved(0, 1.6), 2);
    }

    private static void DrawBracket(Drawing page, Spot at)
    {
        page.Line(Role.FoldEdge, new Ink(0.3), at.Moved(0.6, 1), at.Moved(0.6, 2.6), at.Moved(7.4, 2.6), at.Moved(7.4, 1));
        ArrowHead.Draw(page, Role.FoldEdge, at.Moved(0.6, 2.6), at.Moved(0.6, 0.4), 1.3);
        ArrowHead.Draw(page, Role.FoldEdge, at.Moved(7.4, 2.6), at.Moved(7.4, 0.4), 1.3);
    }

    private static void DrawBar(Drawing page, Spot at) =>
        page.Line(Role.Print, new Ink(0.5, LineStyle.Solid, 0.82), at.Moved(0, 1.6), at.Moved(7, 1.6));

    private static void DrawFlaw(Drawing page, Spot at)
    {
        page.Fill(Role.Flaw, 0.85, BoxAt(at).Corners);
        page.Ring(Role.Flaw, new Ink(0.18, LineStyle.Solid, 0.35), BoxAt(at).Corners);
    }

    private static void DrawNotch(Drawing page, Spot at) =>
        page.Fill(Role.Notch, 0, at.Moved(0.2, 2.4), at.Moved(1.6, 2.4), at.Moved(0.9, 0.8));

    private static void DrawSelvage(Drawing page, Spot at) =>
        page.Line(Role.Selvage, new Ink(0.18, LineStyle.Dotted, 0.35), at.Moved(0, 1.6), at.Moved(7, 1.6));

    private static Area BoxAt(Spot at) => new(at.XMillimeters, at.YMillimeters, at.XMillimeters + 6, at.YMillimeters + 3.4);
}
