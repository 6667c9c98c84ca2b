using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

/// <summary>Plans laid by hand for the output tests. The garment is invented.</summary>
internal static class PlanBuilder
{
    private static readonly CutQuantity Pair = new(1, CutKind.Pairs);
    private static readonly CutQuantity Two = new(2, CutKind.Copies);

    private static readonly string Front = "0 0, 640 0, " + PieceBuilder.Curve([640, 0, 640, 45, 660, 75, 705, 80])
        + ", 672 190, " + PieceBuilder.Curve([672, 190, 600, 170, 520, 190, 480, 258]) + ", 0 285";

    private static readonly string Sleeve = "0 20, 400 0, " + PieceBuilder.Curve([400, 0, 440, 90, 520, 110, 520, 180])
        + ", " + PieceBuilder.Curve([520, 180, 520, 250, 440, 270, 400, 360]) + ", 0 340";

    /// <summary>Folded cloth with a nap: two halves on the fold, pairs in two layers, one piece that finds no place.</summary>
    public static Plan Folded(MeasureSystem system = MeasureSystem.Metric, string title = "Harbour smock, café ½") => PlanOf(system, title, FoldedCloth(system));

    /// <summary>Two cloths: the folded one, and an open one with flipped copies and a turned one.</summary>
    public static Plan TwoCloths() => PlanOf(MeasureSystem.Metric, "Harbour smock & more", FoldedCloth(MeasureSystem.Metric), OpenCloth());

    /// <summary>Open cloth alone.</summary>
    public static Plan Open(MeasureSystem system = MeasureSystem.Metric) => PlanOf(system, "Harbour smock", OpenCloth());

    /// <summary>Many small copies in a row on open cloth.</summary>
    public static Plan Many(int count)
    {
        Piece tie = PieceBuilder.Free("tie ⅝", "", new CutQuantity(count, CutKind.Copies), "0 0, 400 0, 400 60, 0 60");
        IEnumerable<Placement> placements = Enumerable.Range(0, count)
            .Select(i => Place(tie, i + 1, Turn.None, i % 5 * 402, i / 5 * 62));
        return PlanOf(MeasureSystem.Metric, "Bundle of ties", OnCloth("shell", LayForm.Open, Nap.None, [.. placements], []));
    }

    /// <summary>Many pieces of different names in a row on open cloth.</summary>
    public static Plan Various(int count)
    {
        IEnumerable<Placement> placements = Enumerable.Range(0, count).Select(i => Place(
            PieceBuilder.Free(FormattableString.Invariant($"strap {i + 1}"), "", Two, "0 0, 200 0, 200 60, 0 60"), 1, Turn.None, i % 10 * 202, i / 10 * 62));
        return PlanOf(MeasureSystem.Metric, "Straps", OnCloth("shell", LayForm.Open, Nap.None, [.. placements], []));
    }

    /// <summary>One strip of a length, alone on a cloth.</summary>
    public static Plan Strip(double lengthMillimeters, double widthMillimeters)
    {
        string outline = FormattableString.Invariant($"0 0, {lengthMillimeters} 0, {lengthMillimeters} {widthMillimeters}, 0 {widthMillimeters}");
        Piece strip = PieceBuilder.Free("strip", "", new CutQuantity(1, CutKind.Copies), outline);
        return PlanOf(MeasureSystem.Metric, "Strip", OnCloth("shell", LayForm.Open, Nap.None, [Place(strip, 1, Turn.None, 0, 0)], []));
    }

    /// <summary>A plan in which nothing found a place.</summary>
    public static Plan Nothing() => PlanOf(
        MeasureSystem.Metric, "Nothing", OnCloth("shell", LayForm.Open, Nap.None, [], [new Unplaced("front", "M", "It is wider than the cloth.")]));

    private static ClothPlan FoldedCloth(MeasureSystem system)
    {
        Piece front = PieceBuilder.OnFold("front", "M", Front, "300 266");
        Piece back = PieceBuilder.OnFold("back", "M", Front);
        Piece sleeve = PieceBuilder.Free("sleeve", "M", Pair, Sleeve, "520 180");
        Piece pocket = PieceBuilder.Free("pocket ⅝", "", Two, "0 0, 180 0, 180 160, 0 160");
        Piece facing = PieceBuilder.Free("neck facing", "M", Pair, "0 0, 300 0, 320 55, 0 70");
        Piece tie = PieceBuilder.Free("tie", "", Pair, "0 0, 700 0, 700 52, 0 52");
        ImmutableArray<Placement> placements =
        [
            new(front, "M", 1, 2, FoldContact.OnFold, Turn.None, Point.FromMillimeters(0, 0)),
            new(back, "M", 1, 2, FoldContact.OnFold, Turn.None, Point.FromMillimeters(710, 0)),
            new(sleeve, "M", 1, 2, FoldContact.Free, Turn.None, Point.FromMillimeters(0, 300)),
            new(pocket, "M", 1, 2, FoldContact.Free, Turn.None, Point.FromMillimeters(525, 290)),
            new(facing, "M", 1, 2, FoldContact.Free, Turn.None, Point.FromMillimeters(740, 300)),
            new(tie, "M", 1, 2, FoldContact.Free, Turn.None, Point.FromMillimeters(540, 450)),
            new(tie, "M", 2, 2, FoldContact.Free, Turn.None, Point.FromMillimeters(540, 510)),
        ];
        ImmutableArray<Unplaced> unplaced = [new("collar", "M", "It is 72 cm deep and the folded cloth is 68 cm. It fits unfolded, or on cloth 150 cm wide.")];
        return OnCloth("shell", LayForm.Folded, system == MeasureSystem.Metric ? Nap.OneWay : Nap.None, placements, unplaced);
    }

    private static ClothPlan OpenCloth()
    {
        Piece front = PieceBuilder.Opened(PieceBuilder.OnFold("front", "M", Front, "300 266"));
        Piece sleeve = PieceBuilder.Free("sleeve", "M", Pair, Sleeve, "520 180");
        Piece bias = PieceBuilder.Free("bias band", "", new CutQuantity(1, CutKind.Copies), "0 0, 500 0, 500 45, 0 45");
        ImmutableArray<Placement> placements =
        [
            Place(front, 1, Turn.None, 0, 290),
            Place(sleeve, 1, Turn.None, 0, 590),
            Place(sleeve, 2, new Turn(Angle.Half, Facing.Flipped), 530, 960),
            Place(bias, 1, Turn.By(Angle.FromDegrees(45)), 740, 300),
        ];
        return OnCloth("lining", LayForm.Open, Nap.None, placements, []);
    }

    private static Placement Place(Piece piece, int copy, Turn turn, double xMillimeters, double yMillimeters) =>
        new(piece, piece.Size, copy, 1, FoldContact.Free, turn, Point.FromMillimeters(xMillimeters, yMillimeters));

    private static ClothPlan OnCloth(string name, LayForm lay, Nap nap, ImmutableArray<Placement> placements, ImmutableArray<Unplaced> unplaced)
    {
        Cloth cloth = new()
        {
            Name = name,
            Width = Length.FromCentimeters(140),
            Selvage = Length.FromCentimeters(1),
            Lay = lay,
            Nap = nap,
            LengthShrinkageRatio = 0.05,
            WidthShrinkageRatio = 0,
            Ends = Length.FromCentimeters(2),
            Gap = Length.Zero,
            Tilt = Angle.Zero,
            Buying = new BuyingRule(Length.FromCentimeters(10), new ClothPrice(18.50m, Length.FromMeters(1), "EUR")),
        };
        long length = placements.Select(placement => placement.CuttingLine.Bounds.MaxX).DefaultIfEmpty(0).Max();
        Length layLength = Length.FromMicrometers(length);
        Length withEnds = layLength + cloth.Ends * 2;
        Length before = Length.FromMicrometers((long)Math.Ceiling(withEnds.Micrometers / 0.95));
        Length toBuy = before.RoundedUpTo(cloth.Buying.Step);
        string text = FormattableString.Invariant($"{toBuy.TotalMeters:0.0#} m");
        string other = FormattableString.Invariant($"{Math.Ceiling(toBuy.TotalYards * 8)}/8 yd");
        Purchase purchase = new(layLength, withEnds, before, toBuy, text, other, (decimal)toBuy.TotalMeters * 18.50m, "EUR");
        return new ClothPlan(cloth, new Marker(LaySurface.Of(cloth), layLength, placements, unplaced), purchase);
    }

    private static Plan PlanOf(MeasureSystem system, string title, params ImmutableArray<ClothPlan> cloths)
    {
        ImmutableArray<JobPiece> pieces =
        [
            .. cloths.SelectMany(cloth => cloth.Marker.Placements
                .Select(placement => placement.Piece).Distinct().Select(piece => new JobPiece(piece, cloth.Cloth.Name, new Place("job.yaml", 4, 3, piece.Name)))),
        ];
        Job job = new(title, "job.yaml", system, pieces, [.. cloths.Select(cloth => cloth.Cloth)], [new SizeCount("M", 1)]);
        ImmutableArray<Problem> notes = [new(Severity.Note, new Place("smock.svg", 12, 5, "#front"), "The outline was closed over 0.02 mm.", "")];
        return new Plan(job, new Effort(null, 200, 1, 7), cloths, notes);
    }
}
