using System.Collections.Immutable;
using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>Every form of lay, judged by what comes out when the cloth is spread flat again.</summary>
public sealed class LayFormsTests
{
    private const string Lopsided = "0 0, 300 0, 280 200, 0 150";
    private const string Half = "0 0, 400 0, 380 120, 60 180";

    private static readonly LayForm[] Forms = [.. Enum.GetValues<LayForm>().Where(form => form != LayForm.Remnants)];

    private static Gen<(Cloth, ImmutableArray<PieceOrder>)> Jobs { get; } =
        from form in Gen.Int[0, Forms.Length - 1]
        from nap in Gen.Int[0, 2]
        from faces in Gen.Int[0, 3]
        from tilt in Gen.Int[0, 3].Select(choice => choice == 3 ? 2.0 : 0)
        from count in Gen.Int[1, 5]
        from shapes in Shapes.Star.Array[count]
        from cuts in Gen.Int[0, 4].Array[count]
        from garments in Gen.Int[1, 2]
        select (
            TestCloths.Open with
            {
                Width = Length.FromMillimeters(460),
                Selvage = Length.FromMillimeters(10),
                Lay = Forms[form],
                Nap = (Nap)nap,
                Faces = faces == 3 ? ClothFaces.TwoRightSides : ClothFaces.OneRightSide,
                Tilt = Angle.FromDegrees(tilt),
            },
            Orders(shapes, cuts, garments));

    [Fact]
    public void Whatever_the_form_what_comes_out_is_what_was_asked_for() =>
        Jobs.Check(150, (cloth, orders) =>
        {
            LaidCloth laid = LayMaking.Make(LayChoices.For(cloth, orders, LayWording.Metric), Tasks.Steps(60));
            Assert.Empty(SheetJudge.Faults(cloth, orders, laid.Marker));
            Assert.All(laid.OtherForms, other => Assert.Empty(SheetJudge.Faults(cloth, orders, other)));
        });

    // The judge sees what it should see: the same marker, said to be spread another way.
    [Fact]
    public void The_judge_finds_a_pair_that_was_cut_from_one_layer()
    {
        ImmutableArray<PieceOrder> orders = [Order("sleeve", Lopsided, "1 pair")];
        LayTask folded = LayRules.TaskFor(TestCloths.Folded, orders);
        Marker marker = MarkerMaking.Make(folded, Tasks.Steps(0));
        Assert.Empty(SheetJudge.Faults(TestCloths.Folded, orders, marker));
        Assert.NotEmpty(SheetJudge.Faults(TestCloths.Open, orders, marker with { Surface = LaySurface.Of(TestCloths.Open) }));
    }

    [Fact]
    public void A_partial_fold_takes_halves_on_the_fold_and_singles_beside_it()
    {
        LaidCloth laid = Lay(LayForm.PartialFold, Nap.OneWay, Order("front", Half, "1 on fold"), Order("yoke", Lopsided, "1"));
        Assert.Equal(["front 2 OnFold", "yoke 1 Free"], Words(laid));
        Assert.Empty(laid.Marker.Unplaced);
    }

    [Fact]
    public void The_depth_of_a_partial_fold_that_is_given_is_kept()
    {
        Cloth cloth = TestCloths.Open with { Lay = LayForm.PartialFold, FoldDepth = Length.FromCentimeters(40) };
        LaidCloth laid = LayMaking.Make(LayChoices.For(cloth, [Order("front", Half, "1 on fold")], LayWording.Metric), Tasks.Steps(10));
        Assert.Equal(Length.FromCentimeters(40), laid.Marker.Surface.Bands[0].Depth);
    }

    [Fact]
    public void A_partial_fold_without_a_depth_is_as_deep_as_the_deepest_half_needs_at_least()
    {
        LaidCloth laid = Lay(LayForm.PartialFold, Nap.OneWay, Order("front", Half, "1 on fold"), Order("facing", "0 0, 400 0, 400 60, 0 60", "1 on fold"));
        Assert.True(laid.Marker.Surface.Bands[0].Depth >= Length.FromMillimeters(180));
    }

    [Fact]
    public void A_double_fold_holds_two_halves_side_by_side()
    {
        LaidCloth laid = Lay(LayForm.DoubleFold, Nap.OneWay, Order("front", Half, "1 on fold"), Order("back", Half, "1 on fold"));
        Assert.Equal(Length.FromMillimeters(400), laid.Marker.LayLength);
        Assert.Equal([0L, 690_000L], laid.Marker.Placements.Select(placement => placement.Offset.Y).Order());
    }

    // Quarter of 138 cm is 34.5 cm.
    [Fact]
    public void Nothing_crosses_the_meeting_line_of_a_double_fold() => Refused(
        LayForm.DoubleFold, Nap.None, "0 0, 600 0, 600 350, 0 350", "1 pair", "flap is 35 cm deep, each half of the double fold only 34.5 cm");

    [Fact]
    public void A_crosswise_fold_refuses_a_piece_with_a_direction_and_says_what_helps() => Refused(
        LayForm.CrosswiseFold, Nap.OneWay, Lopsided, "1 pair", "turn the upper layer end for end");

    [Fact]
    public void A_piece_that_may_lie_either_way_goes_on_the_crosswise_fold_of_napped_cloth()
    {
        Piece pocket = With(TestPieces.Of("pocket", Lopsided, "1 pair"), DirectionRule.EitherWay, StretchRule.AnyWay);
        LaidCloth laid = LayMaking.Make(LayChoices.For(TestCloths.Open with { Lay = LayForm.CrosswiseFold, Nap = Nap.OneWay }, [new(pocket, "", 1)], LayWording.Metric), Tasks.Steps(10));
        Assert.Empty(laid.Marker.Unplaced);
    }

    [Fact]
    public void A_crosswise_lay_takes_twice_its_length_of_cloth()
    {
        LaidCloth laid = Lay(LayForm.CrosswiseTurned, Nap.OneWay, Order("panel", "0 0, 500 0, 500 1300, 0 1300", "1 pair"));
        Assert.Equal((Length.FromMillimeters(500), Length.FromMillimeters(1000)), (laid.Marker.LayLength, laid.Marker.ClothLength));
        Assert.InRange(laid.Marker.EfficiencyRatio, 0.94, 0.943);
    }

    [Fact]
    public void A_half_has_no_fold_where_two_lengths_lie_on_each_other() => Refused(
        LayForm.CrosswiseTurned, Nap.None, Half, "1 on fold", "opened out it would come out twice");

    [Fact]
    public void A_tube_has_folds_at_both_edges()
    {
        LaidCloth laid = Lay(LayForm.Tubular, Nap.OneWay, Order("front", "0 0, 700 0, 700 600, 0 600", "1 on fold"), Order("back", "0 0, 700 0, 700 600, 0 600", "1 on fold"));
        Assert.Equal(Length.FromMillimeters(700), laid.Marker.LayLength);
        Assert.Equal(Length.FromMillimeters(2760), laid.Marker.Surface.UsableWidth);
    }

    [Fact]
    public void A_mixed_lay_folds_for_halves_and_opens_for_singles()
    {
        LaidCloth laid = Lay(LayForm.Mixed, Nap.OneWay, Order("front", "0 0, 700 0, 700 600, 0 600", "1 on fold"), Order("yoke", "0 0, 200 0, 200 1000, 0 1000", "1"));
        Assert.Equal(Length.FromMillimeters(900), laid.Marker.LayLength);
        Assert.Equal(["front 2 OnFold", "yoke 1 Free"], Words(laid));
    }

    // By hand: the tab does not lie beside the sleeve in the folded section (50 + 30 of 69 cm): 80 + 20 cm. Open, its two copies lie above the yoke (30 + 30 + 70 of 138 cm): 60 + 20 cm.
    [Fact]
    public void A_mixed_lay_finds_the_cheapest_split_with_something_in_both_sections()
    {
        LaidCloth laid = Lay(
            LayForm.Mixed, Nap.OneWay,
            Order("sleeve", "0 0, 600 0, 600 500, 0 500", "1 pair"), Order("tab", "0 0, 200 0, 200 300, 0 300", "1 pair"), Order("yoke", "0 0, 200 0, 200 700, 0 700", "1"));
        Assert.Equal(LayForm.Mixed, laid.Marker.Surface.Form);
        Assert.Equal(Length.FromMillimeters(800), laid.Marker.LayLength);
    }

    [Fact]
    public void The_best_form_is_the_one_that_needs_least_and_the_others_are_told()
    {
        LaidCloth laid = Lay(LayForm.Best, Nap.OneWay, Order("sleeve", "0 0, 600 0, 600 500, 0 500", "1 pair"), Order("yoke", "0 0, 200 0, 200 370, 0 370", "1"));
        Assert.Equal(Length.FromMillimeters(600), laid.Marker.ClothLength);
        Assert.All(laid.OtherForms, other => Assert.True(other.ClothLength >= laid.Marker.ClothLength));
        Assert.Equal(laid.OtherForms.Length, laid.OtherForms.Select(other => other.Surface.Form).Distinct().Count());
    }

    // 138 cm are usable; the reason is that of open cloth, on which nothing else stands in the way.
    [Fact]
    public void What_fits_no_form_is_told_by_its_width()
    {
        LaidCloth laid = Lay(LayForm.Best, Nap.OneWay, Order("sail", "0 0, 200 0, 200 2000, 0 2000", "1"));
        Assert.StartsWith("sail is 200 cm deep, the cloth only 138 cm", Assert.Single(laid.Marker.Unplaced).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Cloth_with_two_right_sides_lets_copies_lie_either_side_up()
    {
        Cloth cloth = TestCloths.Open with { Faces = ClothFaces.TwoRightSides, Nap = Nap.OneWay };
        ImmutableArray<Turn> turns = LayRules.TaskFor(cloth, [Order("pocket", Lopsided, "1")]).Demands.Single().Turns;
        Assert.Equal([Turn.None, new Turn(Angle.Zero, Facing.Flipped)], turns.AsEnumerable());
    }

    [Theory]
    [InlineData(ClothStretch.Across, StretchRule.AcrossGrain, 0)]
    [InlineData(ClothStretch.Along, StretchRule.AcrossGrain, 90)]
    [InlineData(ClothStretch.Across, StretchRule.AlongGrain, 90)]
    [InlineData(ClothStretch.Along, StretchRule.AlongGrain, 0)]
    [InlineData(ClothStretch.Alike, StretchRule.AlongGrain, 0)]
    public void A_piece_is_turned_so_that_it_stretches_the_way_it_must(ClothStretch cloth, StretchRule piece, double degrees)
    {
        Piece band = With(TestPieces.Of("band", Lopsided, "1"), DirectionRule.AsCloth, piece);
        ImmutableArray<Turn> turns = LayRules.TaskFor(TestCloths.Open with { Stretch = cloth, Nap = Nap.OneWay }, [new(band, "", 1)]).Demands.Single().Turns;
        Assert.Equal(Angle.FromDegrees(degrees), turns.Single().Angle);
    }

    [Fact]
    public void A_piece_with_a_direction_of_its_own_keeps_it_on_cloth_without_nap()
    {
        Piece badge = With(TestPieces.Of("badge", Lopsided, "1"), DirectionRule.OneWay, StretchRule.AnyWay);
        Assert.Equal([Turn.None], LayRules.TaskFor(TestCloths.Open, [new(badge, "", 1)]).Demands.Single().Turns.AsEnumerable());
    }

    private static void Refused(LayForm form, Nap nap, string shape, string cut, string reason)
    {
        LaidCloth laid = Lay(form, nap, Order("flap", shape, cut));
        Assert.Contains(reason, laid.Marker.Unplaced.Single().Reason, StringComparison.Ordinal);
        Assert.Empty(laid.Marker.Placements);
    }

    private static LaidCloth Lay(LayForm form, Nap nap, params PieceOrder[] orders)
    {
        Cloth cloth = TestCloths.Open with { Lay = form, Nap = nap };
        LaidCloth laid = LayMaking.Make(LayChoices.For(cloth, [.. orders], LayWording.Metric), Tasks.Steps(50));
        Assert.Empty(SheetJudge.Faults(cloth, [.. orders], laid.Marker));
        return laid;
    }

    private static IEnumerable<string> Words(LaidCloth laid) =>
        laid.Marker.Placements.Select(placement => $"{placement.Piece.Name} {placement.Layers} {placement.Contact}");

    private static PieceOrder Order(string name, string shape, string cut) => new(TestPieces.Of(name, shape, cut), "", 1);

    private static Piece With(Piece piece, DirectionRule direction, StretchRule stretch) => piece with { Direction = direction, Stretch = stretch };

    private static ImmutableArray<PieceOrder> Orders(Polygon[] shapes, int[] cuts, int garments) =>
    [
        .. shapes.SelectMany((shape, i) => new[] { "S", "M" }.Take(garments).Select(size => new PieceOrder(PieceFor(i, shape, cuts[i], size), size, 1 + i % 2))),
    ];

    private static Piece PieceFor(int index, Polygon shape, int cut, string size)
    {
        string text = string.Join(", ", shape.Outer.Select(point => FormattableString.Invariant($"{point.XMillimeters} {point.YMillimeters}")));
        string half = FormattableString.Invariant($"0 0, {60 + 10 * index} 0, {50 + 10 * index} 40, 20 60");
        return cut switch
        {
            0 => TestPieces.Of($"half{index}", half, "1 on fold", size: size),
            1 => TestPieces.Of($"halves{index}", half, "2 on fold", size: size),
            2 => TestPieces.Of($"pair{index}", text, "1 pair", size: size),
            3 => TestPieces.Of($"two{index}", text, "2", size: size),
            _ => TestPieces.Of($"one{index}", text, "1", size: size),
        };
    }
}
