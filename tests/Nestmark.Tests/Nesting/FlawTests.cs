using System.Collections.Immutable;
using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>Places to avoid, judged on the flat cloth with NetTopologySuite.</summary>
public sealed class FlawTests
{
    private static readonly LayForm[] Forms = [LayForm.Open, LayForm.Folded, LayForm.PartialFold, LayForm.DoubleFold, LayForm.Tubular, LayForm.Best];

    [Fact]
    public void Nothing_that_keeps_off_flaws_is_cut_over_one() =>
        (from form in Gen.Int[0, Forms.Length - 1]
         from tolerances in Gen.Int[0, 2].Array[4]
         from spots in Gen.Select(Gen.Int[0, 500], Gen.Int[0, 400], Gen.Int[5, 60]).Array[1, 4]
         from shapes in Shapes.Star.Array[4]
         select (form, tolerances, spots, shapes)).Check(60, (form, tolerances, spots, shapes) =>
         {
             Cloth cloth = TestCloths.Open with
             {
                 Width = Length.FromMillimeters(460),
                 Selvage = Length.FromMillimeters(10),
                 Ends = Length.FromMillimeters(15),
                 Lay = Forms[form],
                 Flaws = [.. spots.Select((spot, i) => new ClothFlaw($"spot {i}", Shapes.Of(FormattableString.Invariant($"{spot.Item1} {spot.Item2}, {spot.Item1 + spot.Item3} {spot.Item2}, {spot.Item1} {spot.Item2 + spot.Item3}"))))],
             };
             ImmutableArray<PieceOrder> orders = [.. shapes.Select((shape, i) => new PieceOrder(PieceOf(i, shape, (FlawTolerance)tolerances[i]), "", 1))];
             Marker marker = LayMaking.Make(LayChoices.For(cloth, orders, LayWording.Metric), Tasks.Steps(40)).Marker;
             Assert.Empty(SheetJudge.Faults(cloth, orders, marker));
             Assert.Empty(SheetJudge.Spoiled(cloth, marker));
         });

    [Fact]
    public void Without_the_rule_the_same_piece_would_lie_on_the_flaw()
    {
        Cloth spotted = TestCloths.Open with { Flaws = [new ClothFlaw("spot", Shapes.Of("20 20, 60 20, 60 60, 20 60"))] };
        Piece band = TestPieces.Rectangle("band", 300, 1300, "1");
        Assert.NotEmpty(SheetJudge.Spoiled(spotted, Lay(TestCloths.Open, band)));
        Assert.Empty(SheetJudge.Spoiled(spotted, Lay(spotted, band)));
    }

    // By hand: the band begins behind the flaw, which ends 6 cm from the cut end; the lay begins 2 cm from it.
    [Fact]
    public void A_lay_that_must_begin_behind_a_flaw_is_longer_by_it()
    {
        Cloth spotted = TestCloths.Open with { Ends = Length.FromCentimeters(2), Flaws = [new ClothFlaw("spot", Shapes.Of("20 20, 60 20, 60 60, 20 60"))] };
        Marker marker = Lay(spotted, TestPieces.Rectangle("band", 300, 1380, "1"));
        Assert.InRange(marker.LayLength.TotalMillimeters, 340, 340.02);
    }

    [Theory]
    [InlineData(FlawTolerance.Nowhere, 690 - 30)]
    [InlineData(FlawTolerance.Anywhere, 690)]
    public void An_off_color_selvage_is_left_to_pieces_that_do_not_show(FlawTolerance tolerance, double depthMillimeters)
    {
        Cloth shaded = TestCloths.Folded with { NearShade = Length.FromMillimeters(30), FarShade = Length.FromMillimeters(20) };
        Piece fits = PieceOf(0, Shapes.Of(FormattableString.Invariant($"0 0, 300 0, 300 {depthMillimeters}, 0 {depthMillimeters}")), tolerance);
        Piece tooDeep = PieceOf(0, Shapes.Of(FormattableString.Invariant($"0 0, 300 0, 300 {depthMillimeters + 0.1}, 0 {depthMillimeters + 0.1}")), tolerance);
        Assert.Empty(LayRules.TaskFor(shaded, [new PieceOrder(fits, "", 1)]).Impossible);
        Assert.NotEmpty(LayRules.TaskFor(shaded, [new PieceOrder(tooDeep, "", 1)]).Impossible);
    }

    [Fact]
    public void Best_leaves_out_the_forms_on_which_flaws_cannot_be_avoided()
    {
        Cloth spotted = TestCloths.Open with { Lay = LayForm.Best, Flaws = [new ClothFlaw("spot", Shapes.Of("20 20, 60 20, 60 60, 20 60"))] };
        ImmutableArray<LayOption> options = LayChoices.For(spotted, [new PieceOrder(TestPieces.Rectangle("band", 300, 300, "1 pair"), "", 1)], LayWording.Metric);
        Assert.DoesNotContain(options, option => option.Form is LayForm.CrosswiseFold or LayForm.CrosswiseTurned or LayForm.Mixed);
    }

    private static Marker Lay(Cloth cloth, Piece piece) => MarkerMaking.Make(LayRules.TaskFor(cloth, [new PieceOrder(piece, "", 1)]), Tasks.Steps(200));

    private static Piece PieceOf(int index, Polygon shape, FlawTolerance tolerance)
    {
        Piece bare = TestPieces.Of($"piece{index}", string.Join(", ", shape.Outer.Select(point => FormattableString.Invariant($"{point.XMillimeters} {point.YMillimeters}"))), "1 pair");
        return bare with
        {
            CuttingLine = tolerance == FlawTolerance.Allowances ? Offset.Grow(bare.SeamLine, Length.FromMillimeters(5)) : bare.CuttingLine,
            Flaws = tolerance,
        };
    }
}
