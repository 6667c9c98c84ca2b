using System.Collections.Immutable;
using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Nesting.Verification;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>Stripes, plaids and borders: every rule is judged on the cut cloth, spread flat.</summary>
public sealed class MatchTests
{
    private const string Lopsided = "0 0, 300 0, 280 200, 0 150";
    private const string Half = "0 0, 400 0, 380 120, 60 180";

    private static readonly LayForm[] Forms = [LayForm.Open, LayForm.Folded, LayForm.PartialFold, LayForm.DoubleFold, LayForm.Tubular, LayForm.Mixed, LayForm.Best];

    private static Gen<(Cloth, ImmutableArray<PieceOrder>, ImmutableArray<MatchRule>)> Jobs { get; } =
        from form in Gen.Int[0, Forms.Length - 1]
        from nap in Gen.Int[0, 2]
        from even in Gen.Int[0, 3]
        from along in Gen.Int[7, 60]
        from across in Gen.Int[9, 40]
        from count in Gen.Int[2, 4]
        from shapes in Shapes.Star.Array[count]
        from cuts in Gen.Int[0, 3].Array[count]
        from kinds in Gen.Int[0, 5].Array[count]
        from sizes in Gen.Int[1, 2]
        select (
            TestCloths.Open with
            {
                Width = Length.FromMillimeters(460),
                Lay = Forms[form],
                Nap = (Nap)nap,
                Repeat = new ClothRepeat(Length.FromMillimeters(along), Length.FromMillimeters(across), even == 0 ? PrintBalance.Uneven : PrintBalance.Even, null),
            },
            Orders(shapes, cuts, sizes),
            Rules(kinds, cuts));

    [Fact]
    public void Whatever_is_matched_shows_the_same_colors_on_the_cut_cloth() =>
        Jobs.Check(60, (cloth, orders, rules) =>
        {
            LaidCloth laid = Lay(cloth, orders, rules, 40);
            Assert.Empty(PrintJudge.Faults(cloth, rules, laid.Marker));
            Assert.Empty(SheetJudge.Faults(cloth, orders, laid.Marker));
        });

    [Theory]
    [InlineData(MatchTarget.Point, ClothAxis.Along)]
    [InlineData(MatchTarget.Point, ClothAxis.Across)]
    [InlineData(MatchTarget.Bar, ClothAxis.Along)]
    [InlineData(MatchTarget.Bar, ClothAxis.Across)]
    [InlineData(MatchTarget.BetweenBars, ClothAxis.Along)]
    [InlineData(MatchTarget.BetweenBars, ClothAxis.Across)]
    public void A_rule_is_kept_and_would_not_be_without_it(MatchTarget target, ClothAxis axis)
    {
        Cloth cloth = Plaid(LayForm.Open, 66, 90);
        ImmutableArray<PieceOrder> orders = [Order("front", Lopsided, "1 pair"), Order("back", "0 0, 330 0, 300 170, 20 210", "1 pair")];
        ImmutableArray<MatchRule> rules = [new("rule", new("front", "C"), target, target == MatchTarget.Point ? new("back", "C") : null, [axis])];
        LaidCloth laid = Lay(cloth, orders, rules, 100);
        Assert.Empty(laid.Marker.Unplaced);
        Assert.Empty(PrintJudge.Faults(cloth, rules, laid.Marker));
        Assert.NotEmpty(PrintJudge.Faults(cloth, rules, Lay(cloth, orders, [], 100).Marker));
    }

    // By hand: panels of 30 cm one behind the other on cloth too narrow for two; the second begins at the fourth bar of 8 cm: 32 + 30.
    [Fact]
    public void The_second_panel_begins_at_a_whole_repeat()
    {
        Cloth cloth = Plaid(LayForm.Open, 80, 80) with { Width = Length.FromMillimeters(420) };
        ImmutableArray<PieceOrder> orders = [Order("front", "0 0, 300 0, 300 390, 0 390", "1"), Order("back", "0 0, 300 0, 300 390, 0 390", "1")];
        LaidCloth laid = Lay(cloth, orders, [Match("front", "A", "back", "A", ClothAxis.Along)], 50);
        Assert.InRange(laid.Marker.LayLength.TotalMillimeters, 619.99, 620.01);
    }

    [Theory]
    [InlineData(900, true)]
    [InlineData(1100, false)]
    public void The_verifier_allows_a_millimeter_and_no_more(long by, bool isKept)
    {
        Cloth cloth = Plaid(LayForm.Open, 80, 80);
        ImmutableArray<MatchRule> rules = [Match("front", "A", "back", "A", ClothAxis.Across)];
        ImmutableArray<PieceOrder> orders = [Order("front", Lopsided, "1"), Order("back", Lopsided, "1")];
        LayTask task = LayRules.TaskFor(cloth, PrintHolding.Held(cloth, orders, rules));
        Marker marker = MarkerMaking.Make(task, Tasks.Steps(0));
        Placement last = marker.Placements[1];
        Assert.Empty(MarkerVerifier.Violations(task, marker));
        long toward = last.Offset.Y > 500_000 ? -1 : 1;
        Marker moved = marker with { Placements = [marker.Placements[0], last with { Offset = last.Offset + new Point(2_000_000, toward * by) }] };
        moved = moved with { LayLength = Length.FromMicrometers(moved.Placements.Max(placement => placement.CuttingLine.Bounds.MaxX)) };
        Assert.Equal(isKept, MarkerVerifier.Violations(task, moved).IsEmpty);
    }

    [Fact]
    public void An_uneven_print_makes_every_piece_lie_the_same_way_up()
    {
        Cloth cloth = Plaid(LayForm.Open, 70, 90) with { Repeat = new ClothRepeat(Length.FromMillimeters(70), null, PrintBalance.Uneven, null) };
        LayTask task = LayRules.TaskFor(cloth, [Order("front", Lopsided, "2")]);
        Assert.All(task.Demands, demand => Assert.Equal(Turn.None, Assert.Single(demand.Turns)));
        Assert.True(LayRules.TaskFor(cloth with { Repeat = null }, [Order("front", Lopsided, "2")]).Demands[0].Turns.Length > 1);
    }

    [Fact]
    public void A_piece_on_the_bias_is_refused_with_the_remedy() =>
        Refused(Plaid(LayForm.Open, 60, 60), TestPieces.Of("front", Lopsided, "1", GrainRule.Bias), "cut it along the grain");

    [Fact]
    public void Cloth_folded_across_is_refused_with_the_remedy() =>
        Refused(Plaid(LayForm.CrosswiseFold, 60, 60), TestPieces.Of("front", Lopsided, "1 pair"), "fold the cloth lengthwise or lay it open");

    // The middle is at 69 cm, bars at 4, 12 … 68, 76 cm from the usable edge (5 cm less the selvage): folds at 68 and, between two bars, at 64.
    [Fact]
    public void A_fold_beside_a_bar_is_refused_and_the_remedy_works()
    {
        Cloth cloth = Plaid(LayForm.Folded, 60, 80) with { Repeat = new ClothRepeat(Length.FromMillimeters(60), Length.FromMillimeters(80), PrintBalance.Even, Length.FromMillimeters(50)) };
        Refused(cloth, TestPieces.Of("front", Lopsided, "1 pair"), "fold_depth: 68 cm");
        Cloth mended = cloth with { Lay = LayForm.PartialFold, FoldDepth = Length.FromMillimeters(680) };
        ImmutableArray<MatchRule> rules = [Match("front", "A", "back", "B", ClothAxis.Across)];
        LaidCloth laid = Lay(mended, [Order("front", Lopsided, "1 pair"), Order("back", Half, "1 on fold")], rules, 30);
        Assert.Empty(laid.Marker.Unplaced);
        Assert.Empty(PrintJudge.Faults(mended, rules, laid.Marker));
    }

    [Fact]
    public void Rules_that_contradict_each_other_are_refused()
    {
        ImmutableArray<MatchRule> rules = [Match("front", "A", "back", "A", ClothAxis.Along), Match("front", "B", "back", "D", ClothAxis.Along)];
        LaidCloth laid = Lay(Plaid(LayForm.Open, 70, 70), [Order("front", Lopsided, "1"), Order("back", Lopsided, "1")], rules, 0);
        Assert.Contains("rules before it", Assert.Single(laid.Marker.Unplaced).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_sides_of_an_uneven_print_cannot_match_crosswise()
    {
        Cloth cloth = Plaid(LayForm.Open, 70, 70) with { Repeat = new ClothRepeat(null, Length.FromMillimeters(70), PrintBalance.Uneven, null) };
        Refused(cloth, TestPieces.Of("front", Lopsided, "1 pair"), "Match it lengthwise only");
    }

    [Fact]
    public void A_hem_lies_where_the_border_begins()
    {
        Cloth cloth = TestCloths.Open with { Nap = Nap.OneWay, Border = new ClothBorder(BorderEdge.Near, Length.FromCentimeters(4), Length.FromCentimeters(18)) };
        ImmutableArray<MatchRule> rules = [new("skirt.A on the border", new("skirt", "A"), MatchTarget.Border, null, [ClothAxis.Across])];
        ImmutableArray<PieceOrder> orders = [new(TestPieces.Of("skirt", "0 0, 600 60, 600 440, 0 500", "2", GrainRule.Across), "", 1)];
        Marker held = Lay(cloth, orders, rules, 30).Marker;
        Assert.All(held.Placements, placement => Assert.Equal(30_000, placement.CuttingLine.Bounds.MinY));
        Assert.Contains(Lay(cloth, orders, [], 30).Marker.Placements, placement => placement.CuttingLine.Bounds.MinY != 30_000);
    }

    [Fact]
    public void A_border_on_one_of_two_layers_is_refused()
    {
        Cloth cloth = TestCloths.Folded with { Border = new ClothBorder(BorderEdge.Near, Length.FromCentimeters(4), Length.FromCentimeters(18)) };
        ImmutableArray<MatchRule> rules = [new("skirt.A on the border", new("skirt", "A"), MatchTarget.Border, null, [ClothAxis.Across])];
        Marker marker = Lay(cloth, [new(TestPieces.Of("skirt", "0 0, 400 0, 400 300, 0 300", "2", GrainRule.Across), "", 1)], rules, 0).Marker;
        Assert.Contains("lay the cloth open", Assert.Single(marker.Unplaced).Reason, StringComparison.Ordinal);
    }

    private static void Refused(Cloth cloth, Piece piece, string reason)
    {
        ClothAxis axis = cloth.Repeat!.Across is null ? ClothAxis.Along : ClothAxis.Across;
        Marker marker = Lay(cloth, [new(piece, "", 1)], [new("rule", new("front", "A"), MatchTarget.Bar, null, [axis])], 0).Marker;
        Assert.Contains(reason, Assert.Single(marker.Unplaced).Reason, StringComparison.Ordinal);
    }

    private static LaidCloth Lay(Cloth cloth, ImmutableArray<PieceOrder> orders, ImmutableArray<MatchRule> rules, int steps) =>
        LayMaking.Make(LayChoices.For(cloth, PrintHolding.Held(cloth, orders, rules), LayWording.Metric), Tasks.Steps(steps));

    private static Cloth Plaid(LayForm form, double along, double across) => TestCloths.Open with
    {
        Lay = form,
        Repeat = new ClothRepeat(Length.FromMillimeters(along), Length.FromMillimeters(across), PrintBalance.Even, null),
    };

    private static PieceOrder Order(string name, string shape, string cut) => new(TestPieces.Of(name, shape, cut), "", 1);

    private static MatchRule Match(string first, string point, string second, string other, ClothAxis axis) =>
        new($"{first}.{point} matches {second}.{other} {axis}", new(first, point), MatchTarget.Point, new(second, other), [axis]);

    private static ImmutableArray<PieceOrder> Orders(Polygon[] shapes, int[] cuts, int sizes) =>
        [.. shapes.SelectMany((shape, i) => new[] { "S", "M" }.Take(sizes).Select(size => new PieceOrder(PieceFor(i, shape, cuts[i], size), size, 1 + i % 2)))];

    private static Piece PieceFor(int index, Polygon shape, int cut, string size)
    {
        string half = FormattableString.Invariant($"0 0, {60 + 10 * index} 0, {50 + 10 * index} 40, 20 60");
        return cut == 0
            ? TestPieces.Of($"p{index}", half, "1 on fold", size: size)
            : TestPieces.Of($"p{index}", Shapes.Text(shape), cut switch { 1 => "1 pair", 2 => "2", _ => "1" }, size: size);
    }

    /// <summary>A rule for each piece but the first: to the one before it, or to the print.</summary>
    private static ImmutableArray<MatchRule> Rules(int[] kinds, int[] cuts) =>
    [
        .. Enumerable.Range(1, kinds.Length - 1).Select(i => kinds[i] switch
        {
            0 or 1 => Match($"p{i}", "B", $"p{i - 1}", "C", ClothAxis.Along),
            2 or 3 => Match($"p{i}", cuts[i] == 0 ? "A" : "B", $"p{i - 1}", cuts[i - 1] == 0 ? "A" : "C", ClothAxis.Across),
            4 => new MatchRule("bar", new($"p{i}", "B"), MatchTarget.Bar, null, [ClothAxis.Along]),
            _ => new MatchRule("between", new($"p{i}", "A"), MatchTarget.BetweenBars, null, [ClothAxis.Across]),
        }),
    ];
}
