using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>Drafts bias strips: single strips to join, or a square or a leftover that is sewn into a tube and cut round as one strip.</summary>
public static class BiasDraft
{
    private const int MostStrips = 500;

    /// <summary>Single strips at 45 degrees, all alike, to be joined end to end: with ends on the straight grain on open cloth, with square ends on folded cloth.</summary>
    /// <remarks>Of folded cloth half of the strips come out turned over, and slanted ends of those would slant the wrong way.</remarks>
    public static DraftingResult Strips(BiasMeasures measures, DraftingCloth cloth)
    {
        double longest = cloth.IsFolded
            ? BiasYield.LongestSquareStripMillimeters(cloth.Depth, measures.Width, measures.Seam)
            : BiasYield.LongestStripMillimeters(cloth.Depth, measures.Seam);
        double total = measures.Total.TotalMillimeters;
        int needed = longest <= measures.Width.TotalMillimeters ? int.MaxValue : (int)Math.Min(int.MaxValue - 1, Math.Ceiling(total / longest - 1e-9));
        int count = cloth.IsFolded && needed % 2 == 1 && needed < int.MaxValue ? needed + 1 : needed;
        if (count > MostStrips)
            return DraftingResult.Refused("The cloth is too narrow for bias strips across it, or they would be more than 500.", "Take wider cloth, or cut them from: square.");
        double length = total / count;
        double width = measures.Width.TotalMillimeters;
        double slant = cloth.IsFolded ? 0 : width;
        ImmutableArray<OutlineVertex> outline = [EdgeRoles.Corner(slant, 0), EdgeRoles.Corner(length + slant, 0), EdgeRoles.Corner(length, width), EdgeRoles.Corner(0, width)];
        string joins = count == 1 ? "no join" : count == 2 ? "1 join" : (count - 1).ToString(CultureInfo.InvariantCulture) + " joins";
        return DraftingResult.Of(new DraftedShape
        {
            Outline = outline,
            Cut = new CutQuantity(count, CutKind.Copies),
            Grain = GrainRule.Bias,
            Edges = EdgeRoles.Of(outline, [(outline[0].Point, Length.Zero), (outline[2].Point, Length.Zero)]),
            Said = $"{count.ToString(CultureInfo.InvariantCulture)} bias {(count == 1 ? "strip" : "strips")} of {cloth.Say(Length.FromMillimeters(length))} x {cloth.Say(measures.Width)}, {joins}{(cloth.IsFolded ? " straight across" : "")}, {cloth.Say(measures.Total)} when joined.",
        });
    }

    /// <summary>A square that gives the length in whole strips.</summary>
    public static DraftingResult Square(BiasMeasures measures, DraftingCloth cloth)
    {
        int strips = BiasYield.WholeStrips(measures.Total, measures.Width);
        Length side = Length.FromMillimeters(BiasYield.SideForMillimeters(strips, measures.Width, measures.Seam));
        Length byArea = Length.FromMillimeters(BiasYield.SideByAreaMillimeters(measures.Total, measures.Width));
        string said = $"A square of {cloth.Say(side)} gives {cloth.Say(Length.FromMillimeters(BiasYield.LengthOfMillimeters(strips, measures.Width)))} of bias strip {cloth.Say(measures.Width)} wide "
            + $"in {strips.ToString(CultureInfo.InvariantCulture)} whole strips a half; by area alone {cloth.Say(byArea)} would seem enough.";
        return DraftingResult.Of(Cloth(side, side, measures.Width, said, cloth));
    }

    /// <summary>A leftover of given sides, if it gives the length in whole strips.</summary>
    /// <param name="measures">What is wanted.</param>
    /// <param name="length">The leftover's side along the grain.</param>
    /// <param name="breadth">Its side across the grain.</param>
    /// <param name="cloth">What it is laid on.</param>
    public static DraftingResult Leftover(BiasMeasures measures, Length length, Length breadth, DraftingCloth cloth)
    {
        Length yield = Length.FromMillimeters(Math.Min(900_000, BiasYield.LengthFromMillimeters(length, breadth, measures.Width, measures.Seam)));
        string size = $"{cloth.Say(length)} x {cloth.Say(breadth)}";
        if (yield < measures.Total)
        {
            Length side = Length.FromMillimeters(BiasYield.SideForMillimeters(BiasYield.WholeStrips(measures.Total, measures.Width), measures.Width, measures.Seam));
            return DraftingResult.Refused(
                $"A leftover of {size} gives {cloth.Say(yield)} of bias strip {cloth.Say(measures.Width)} wide in whole strips; {cloth.Say(measures.Total)} are wanted, {cloth.Say(measures.Total - yield)} more.",
                $"Take a square of {cloth.Say(side)}, or narrower strips.");
        }
        string said = $"A leftover of {size} gives {cloth.Say(yield)} of bias strip {cloth.Say(measures.Width)} wide in whole strips; {cloth.Say(measures.Total)} are wanted.";
        return DraftingResult.Of(Cloth(length, breadth, measures.Width, said, cloth));
    }

    /// <summary>The rectangle to cut, half of it on folded cloth; nothing is added around it.</summary>
    private static DraftedShape Cloth(Length length, Length breadth, Length width, string said, DraftingCloth cloth)
    {
        double x = length.TotalMillimeters;
        double y = breadth.TotalMillimeters / cloth.Layers;
        ImmutableArray<OutlineVertex> outline = [EdgeRoles.Corner(0, 0), EdgeRoles.Corner(x, 0), EdgeRoles.Corner(x, y), EdgeRoles.Corner(0, y)];
        return new DraftedShape
        {
            Outline = outline,
            Cut = new CutQuantity(1, cloth.IsFolded ? CutKind.OnFold : CutKind.Copies),
            FoldLine = cloth.IsFolded ? new Segment(Point.Origin, Point.FromMillimeters(x, 0)) : null,
            Edges = EdgeRoles.Of(outline, [.. outline.Select(vertex => (vertex.Point, Length.Zero))]),
            Lines = cloth.IsFolded ? [] : StripLines(x, y, width.TotalMillimeters),
            Said = said,
        };
    }

    /// <summary>The diagonal that is cut first, and the strips beside it, all at 45 degrees from the lower left corner on.</summary>
    private static ImmutableArray<PieceLine> StripLines(double x, double y, double width)
    {
        List<PieceLine> lines = [];
        double step = width * 1.4142135623730951;
        for (int i = 0; i * step < Math.Max(x, y) && i < MostStrips; i++)
        {
            AddLine(i == 0 ? "cut first" : "", i * step, 0);
            if (i > 0)
                AddLine("", 0, i * step);
        }
        return [.. lines];

        void AddLine(string label, double startX, double startY)
        {
            double run = Math.Min(x - startX, y - startY);
            if (run > 1)
                lines.Add(new PieceLine(label, [Point.FromMillimeters(startX, startY), Point.FromMillimeters(startX + run, startY + run)]));
        }
    }
}
