using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;

namespace Nestmark.Pieces.Drafting;

/// <summary>Drafts a pocket bag for a side seam: a straight edge with the opening between two notches, rounded at the bottom.</summary>
/// <remarks>The top of the bag lies toward the head of the grainline, +x; the edge that is sewn into the seam is A-B. Two pairs for two pockets: common practice.</remarks>
public static class PocketBag
{
    /// <summary>The bag and how often it is cut.</summary>
    public static DraftingResult Draft(PocketMeasures measures, Func<Length, string> say)
    {
        Length least = measures.Opening + measures.Above;
        if (measures.Depth < least)
            return DraftingResult.Refused($"The bag is {say(measures.Depth)} deep, and its opening reaches down to {say(least)}.", $"Make it at least {say(least)} deep.");
        double x = measures.Depth.TotalMillimeters;
        double y = measures.Width.TotalMillimeters;
        double radius = Math.Min(x, y) / 2;
        ImmutableArray<OutlineVertex> outline = Flattening.Closed(
        [
            new StraightSegment(new(0, 0), new(x, 0)),
            new StraightSegment(new(x, 0), new(x, y)),
            new StraightSegment(new(x, y), new(radius, y)),
            Rounding(radius, y),
            new StraightSegment(new(0, y - radius), new(0, 0)),
        ]);
        double top = x - measures.Above.TotalMillimeters;
        return DraftingResult.Of(new DraftedShape
        {
            Outline = outline,
            Cut = measures.Cut ?? new CutQuantity(2, CutKind.Pairs),
            Notches = [.. new[] { top - measures.Opening.TotalMillimeters, top }.Where(along => along > 0.5 && along < x - 0.5).Select(along => new PieceMark("opening", Point.FromMillimeters(along, 0)))],
            Said = $"The opening of {say(measures.Opening)} lies {say(measures.Above)} below the top of the bag, which is {say(measures.Depth)} deep and {say(measures.Width)} wide.",
        });
    }

    private static ArcSegment Rounding(double radius, double y) => new(new(radius, y), new(0, y - radius))
    {
        Center = new(radius, y - radius),
        CosineAxis = new(radius, 0),
        SineAxis = new(0, radius),
        StartDegrees = 90,
        SweepDegrees = 90,
    };
}
