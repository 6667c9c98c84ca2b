using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Yardage;

namespace Nestmark.Output.Guide;

/// <summary>The lay drawn to scale, with rulers from the cut end and from the fold or the lower edge.</summary>
internal static class LayView
{
    /// <summary>Room for the ruler and words at the left.</summary>
    public const double LeftRoom = 11;

    /// <summary>Room for words above.</summary>
    public const double TopRoom = 4.5;

    /// <summary>Room for words and ruler below.</summary>
    public const double BottomRoom = 10;

    private const double HatchSpacing = 1.6;
    private const double SmallSize = 2.3;
    private const string Fold = "FOLD";

    /// <summary>Millimeters on paper for one millimeter of cloth, when the view must fit a width and a height, words included.</summary>
    public static double ScaleFor(ClothPlan cloth, double widthMillimeters, double heightMillimeters)
    {
        Area area = ClothFrame.Of(cloth);
        return Math.Max(0, Math.Min(
            (widthMillimeters - LeftRoom - 2) / Math.Max(1, area.WidthMillimeters),
            (heightMillimeters - TopRoom - BottomRoom) / Math.Max(1, area.HeightMillimeters)));
    }

    /// <summary>Draws it.</summary>
    /// <returns>Where it ends, counted up the page.</returns>
    public static double Draw(Drawing page, ClothPlan cloth, Spot topLeft, double scale, MeasureSystem system)
    {
        Area area = ClothFrame.Of(cloth);
        Frame frame = new(scale, new Spot(
            topLeft.XMillimeters + LeftRoom - area.LeftMillimeters * scale,
            topLeft.YMillimeters - TopRoom - area.TopMillimeters * scale));
        PrintLines.Draw(page, frame, cloth);
        ClothFrame.Draw(page, frame, cloth, 0.25);
        foreach (Laid laid in Laid.AllOf(cloth))
            DrawPiece(page, frame, laid, cloth.Cloth.Nap);
        DrawWords(page, frame, area, cloth);
        LayRuler.Draw(page, frame, area, system);
        return frame.Of(0, area.BottomMillimeters).YMillimeters - BottomRoom;
    }

    private static void DrawPiece(Drawing page, Frame frame, Laid laid, Nap nap)
    {
        ImmutableArray<ImmutableArray<Spot>> rings = laid.CuttingRings(frame);
        Drawing lines = new();
        GrainArrow.Draw(lines, frame, laid.Placement, nap, new Ink(0.18), 2);
        FoldBracket.Draw(lines, frame, laid.Placement, new Ink(0.3), 2);
        IEnumerable<(Spot, Spot)> obstacles = lines.Figures.OfType<PathFigure>()
            .SelectMany(path => path.Runs).SelectMany(run => run.Zip(run.Skip(1)));
        LabelPlace? fitted = PlaceOf(laid, rings, [.. obstacles]);
        LabelPlace label = fitted ?? Squeezed(laid, rings);
        if (laid.Placement.Turn.Facing == Geometry.Facing.Flipped)
        {
            page.Lines(Role.WrongSide, new Ink(0.1, LineStyle.Solid, 0.4), Hatching.Of(rings, HatchSpacing));
            page.Fill(Role.Label, 1, label.Area.Corners);
        }
        laid.DrawCuttingLine(page, frame, new Ink(0.35));
        NotchMark.DrawAll(page, frame, laid.Placement, 1.4);
        foreach (Figure figure in lines.Figures)
            page.Add(figure);
        if (fitted is not null)
            page.Fill(Role.Label, 1, fitted.Area.Corners);
        label.Draw(page);
    }

    // Number and name, or the number alone; both clear of the arrow if there is room, else across it on a white plate.
    private static LabelPlace? PlaceOf(Laid laid, ImmutableArray<ImmutableArray<Spot>> rings, ImmutableArray<(Spot, Spot)> obstacles)
    {
        TextLine numberLine = NumberLine(laid);
        string number = numberLine.Text;
        TextBlock full = new([numberLine, new TextLine(PieceWords.Title(laid.Placement), 2.9)]);
        TextBlock oneLine = new([new TextLine(number + " " + PieceWords.Title(laid.Placement), 2.9, FontWeight.Bold)]);
        TextBlock bare = new([numberLine with { SizeMillimeters = 3 }]);
        Area bounds = Area.Around(rings[0]);
        LabelRoom clear = new(rings, bounds, obstacles);
        LabelRoom crossed = new(rings, bounds, []);
        return clear.PlaceFor(full, 0.8, LabelTurn.Upright) ?? clear.PlaceFor(oneLine, 0.8) ?? clear.PlaceFor(bare, 0.8)
            ?? crossed.PlaceFor(oneLine, 0.8) ?? crossed.PlaceFor(bare, 0.8);
    }

    // The number over a piece that is too small for it.
    private static LabelPlace Squeezed(Laid laid, ImmutableArray<ImmutableArray<Spot>> rings)
    {
        Area bounds = Area.Around(rings[0]);
        TextBlock bare = new([NumberLine(laid) with { SizeMillimeters = 2.2 }]);
        return new LabelPlace(new LabelRoom(rings, bounds, []).Deepest() ?? bounds.Center, bare, LabelTurn.Upright);
    }

    private static TextLine NumberLine(Laid laid) => new(laid.Number.ToString(CultureInfo.InvariantCulture), 4.2, FontWeight.Bold);

    /// <summary>What lies along the upper edge, the lower edge and the left end of a lay.</summary>
    private static (string Top, string Bottom, string Left) EdgeWords(LaySurface surface) => surface.Form switch
    {
        LayForm.Open => ("selvage", "selvage", "cut end"),
        LayForm.Folded => ("selvages", Fold, "cut end"),
        LayForm.PartialFold => ("selvage", Fold, "cut end"),
        LayForm.DoubleFold or LayForm.Tubular => (Fold, Fold, "cut end"),
        LayForm.CrosswiseFold => ("selvage", "selvage", Fold),
        LayForm.Mixed => ("selvage", "fold, then selvage", "cut end"),
        _ => ("selvages", "selvages", "cut ends"),
    };

    private static FontWeight WeightOf(string word) => word == Fold ? FontWeight.Bold : FontWeight.Regular;

    private static void DrawWords(Drawing page, Frame frame, Area area, ClothPlan cloth)
    {
        double right = area.RightMillimeters;
        if (cloth.Leftovers is { } table)
        {
            foreach ((Remnant remnant, Geometry.Point at) in table.Places)
                page.Text(Role.Label, remnant.Name, frame.Of(at.XMillimeters, remnant.Area.Bounds.MaxY / 1000.0).Moved(0, 1), SmallSize);
            return;
        }
        (string top, string bottom, string left) = EdgeWords(cloth.Marker.Surface);
        page.Text(Role.Label, top, frame.Of(right, area.TopMillimeters).Moved(0, 1), SmallSize, Anchor.End, WeightOf(top));
        page.Text(Role.Label, bottom, frame.Of(right, area.BottomMillimeters).Moved(0, -3), SmallSize, Anchor.End, WeightOf(bottom));
        page.Text(Role.Label, left, frame.Of(area.LeftMillimeters, area.TopMillimeters).Moved(0, 1), SmallSize, Anchor.Start, WeightOf(left));
        if (cloth.Cloth.Nap == Nap.None)
            return;
        Spot nap = frame.Of((area.LeftMillimeters + right) / 2, area.TopMillimeters).Moved(0, 1);
        page.Text(Role.Label, cloth.Cloth.Nap == Nap.OneWay ? "nap: all pieces this way" : "nap: each size one way", nap, SmallSize, Anchor.End);
        if (cloth.Cloth.Nap == Nap.OneWay)
        {
            page.Line(Role.Grainline, new Ink(0.2), nap.Moved(1.5, 0.8), nap.Moved(9, 0.8));
            ArrowHead.Draw(page, Role.Grainline, nap.Moved(1.5, 0.8), nap.Moved(11, 0.8), 2);
        }
    }
}
