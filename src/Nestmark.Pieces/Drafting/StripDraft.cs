using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>Drafts straight strips, in as many like ones as the cloth's width asks.</summary>
/// <remarks>
/// Strips across the cloth: references/trade.md 9.3, ceil(length / (usable width - 2 allowances)). On folded cloth those lie with their middle
/// on the fold, and an odd number of strips along the grain lies with half its width on the fold, so that no strip comes out twice.
/// </remarks>
public static class StripDraft
{
    private const int MostStrips = 500;

    /// <summary>How many strips of a cloth's width make a length; 0 when the width is less than the allowances.</summary>
    public static int CountAcross(Length total, Length usableWidth, Length seam)
    {
        long room = (usableWidth - seam * 2).Micrometers;
        return room <= 0 ? 0 : (int)Math.Min(int.MaxValue, (total.Micrometers + room - 1) / room);
    }

    /// <summary>The strip and how often it is cut.</summary>
    public static DraftingResult Draft(StripMeasures measures, DraftingCloth cloth)
    {
        int count = measures.Count ?? (measures.Run == StripRun.Along ? 1 : CountAcross(measures.Total, cloth.UsableWidth, measures.Seam));
        if (count is < 1 or > MostStrips)
            return DraftingResult.Refused("The cloth is too narrow for strips across it, or they would be more than 500.", "Write run: along, or take wider cloth.");
        Length length = Length.FromMillimeters(measures.Total.TotalMillimeters / count);
        if (measures.Point >= length)
            return DraftingResult.Refused($"The point is as long as the whole strip ({cloth.Say(length)}).", "Make the point shorter.");
        if (measures.Run == StripRun.Across && length + measures.Seam * 2 > cloth.UsableWidth)
            return DraftingResult.Refused($"Strips {cloth.Say(length)} long do not fit across cloth with {cloth.Say(cloth.UsableWidth)} of usable width.", "Leave strips out, or take more of them.");
        return DraftingResult.Of(measures.Run == StripRun.Along ? Along(measures, count, length, cloth) : Across(measures, count, length, cloth));
    }

    private static DraftedShape Along(StripMeasures measures, int count, Length length, DraftingCloth cloth)
    {
        CutQuantity cut = measures.Cut ?? new CutQuantity(count, cloth.IsFolded && count % 2 == 1 ? CutKind.OnFold : CutKind.Copies);
        bool half = cut.Kind == CutKind.OnFold;
        double x = length.TotalMillimeters;
        double whole = measures.Width.TotalMillimeters;
        double y = half ? whole / 2 : whole;
        double point = measures.Point.TotalMillimeters;
        ImmutableArray<OutlineVertex> outline = point == 0 ? [EdgeRoles.Corner(0, 0), EdgeRoles.Corner(x, 0), EdgeRoles.Corner(x, y), EdgeRoles.Corner(0, y)]
            : half ? [EdgeRoles.Corner(0, 0), EdgeRoles.Corner(x, 0), EdgeRoles.Corner(x - point, y), EdgeRoles.Corner(0, y)]
            : [EdgeRoles.Corner(0, 0), EdgeRoles.Corner(x - point, 0), EdgeRoles.Corner(x, y / 2), EdgeRoles.Corner(x - point, y), EdgeRoles.Corner(0, y)];
        return new DraftedShape
        {
            Outline = outline,
            Cut = cut,
            FoldLine = half ? new Segment(Point.Origin, Point.FromMillimeters(x, 0)) : null,
            Notches = [.. measures.Notches.Select(notch => new PieceMark(notch.Name, Point.FromMillimeters(notch.Along.TotalMillimeters % x, y)))],
            Lines = measures.Make == StripMake.Double && !half ? [new PieceLine("fold", [Point.FromMillimeters(0, y / 2), Point.FromMillimeters(x, y / 2)])] : [],
            Said = Said(measures, count, length, cloth),
        };
    }

    private static DraftedShape Across(StripMeasures measures, int count, Length length, DraftingCloth cloth)
    {
        bool half = cloth.IsFolded;
        double x = measures.Width.TotalMillimeters;
        double whole = length.TotalMillimeters;
        double y = half ? whole / 2 : whole;
        return new DraftedShape
        {
            Outline = [EdgeRoles.Corner(0, 0), EdgeRoles.Corner(x, 0), EdgeRoles.Corner(x, y), EdgeRoles.Corner(0, y)],
            Cut = new CutQuantity(count, half ? CutKind.OnFold : CutKind.Copies),
            FoldLine = half ? new Segment(Point.Origin, Point.FromMillimeters(x, 0)) : null,
            Notches = half ? [] : [.. measures.Notches.Select(notch => new PieceMark(notch.Name, Point.FromMillimeters(x, notch.Along.TotalMillimeters % y)))],
            Lines = measures.Make == StripMake.Double ? [new PieceLine("fold", [Point.FromMillimeters(x / 2, 0), Point.FromMillimeters(x / 2, y)])] : [],
            Said = Said(measures, count, length, cloth),
        };
    }

    private static string Said(StripMeasures measures, int count, Length length, DraftingCloth cloth)
    {
        string strips = count == 1 ? "1 strip" : count.ToString(CultureInfo.InvariantCulture) + " strips";
        string joined = count == 1 ? "" : $", {cloth.Say(measures.Total)} when joined";
        string folded = measures.Make == StripMake.Double ? $", folded to {cloth.Say(measures.Width / 2)}" : "";
        return $"{strips} of {cloth.Say(length)} x {cloth.Say(measures.Width)} before allowances{joined}{folded}.";
    }
}
