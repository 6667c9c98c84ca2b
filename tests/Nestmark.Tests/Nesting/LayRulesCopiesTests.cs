using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>What the words on a piece mean: references/trade.md 4.2 ([SEWORG], [AFQ], [LOWL], common practice).</summary>
public sealed class LayRulesCopiesTests
{
    [Fact]
    public void A_pair_on_open_cloth_is_one_plain_and_one_flipped_copy() =>
        Assert.Equal("1 x1 Plain Free, 2 x1 Flipped Free", Demands(TestCloths.Open, "1 pair", 1));

    [Fact]
    public void Copies_on_open_cloth_lie_as_drawn() =>
        Assert.Equal("1 x1 Plain Free, 2 x1 Plain Free, 3 x1 Plain Free", Demands(TestCloths.Open, "3", 1));

    [Fact]
    public void A_pair_on_folded_cloth_is_one_placement_through_two_layers() =>
        Assert.Equal("1 x2 Plain Free, 2 x2 Plain Free", Demands(TestCloths.Folded, "2 pairs", 1));

    [Fact]
    public void Cut_2_on_folded_cloth_is_one_placement_through_two_layers() =>
        Assert.Equal("1 x2 Plain Free", Demands(TestCloths.Folded, "2", 1));

    [Fact]
    public void Cut_1_on_fold_touches_the_fold_of_folded_cloth() =>
        Assert.Equal("1 x2 Plain OnFold", Demands(TestCloths.Folded, "1 on fold", 1));

    [Fact]
    public void Cut_2_on_fold_has_two_places_on_the_fold() =>
        Assert.Equal("1 x2 Plain OnFold, 2 x2 Plain OnFold", Demands(TestCloths.Folded, "2 on fold", 1));

    [Fact]
    public void Copies_are_counted_through_all_garments_of_a_size() =>
        Assert.Equal("1 x1 Plain Free, 2 x1 Flipped Free, 3 x1 Plain Free, 4 x1 Flipped Free", Demands(TestCloths.Open, "1 pair", 2));

    // By hand: two garments need 2 x 1 or 2 x 3 copies, which two layers give in 1 and 3 places.
    [Theory]
    [InlineData("1", 2, 1)]
    [InlineData("3", 2, 3)]
    [InlineData("1", 4, 2)]
    public void An_odd_count_of_a_piece_that_is_its_own_mirror_image_is_cut_in_twos_over_all_garments(string cut, int garments, int places)
    {
        LayTask task = LayRules.TaskFor(TestCloths.Folded, [new(TestPieces.Rectangle("band", 300, 60, cut), "M", garments)]);
        Assert.Empty(task.Impossible);
        Assert.Equal(Enumerable.Range(1, places), task.Demands.Select(demand => demand.Copy));
        Assert.All(task.Demands, demand => Assert.Equal(2, demand.Layers));
        Assert.Equal($"band is cut {cut} for each garment, and each place gives two, which go to any of them.", Assert.Single(LayNotes.For(TestCloths.Folded, task.Demands)).What);
    }

    [Fact]
    public void An_odd_total_or_a_piece_with_a_left_and_a_right_is_refused_on_folded_cloth()
    {
        Assert.Single(LayRules.TaskFor(TestCloths.Folded, [new(TestPieces.Rectangle("band", 300, 60, "1"), "M", 3)]).Impossible);
        Assert.Single(TaskFor(TestCloths.Folded, "1", 2).Impossible);
    }

    // A rectangle with one notch off its middle has a left and a right; with one in the middle of its end it has not.
    [Theory]
    [InlineData(40.0, true)]
    [InlineData(30.0, false)]
    public void Notches_tell_a_left_from_a_right(double y, bool isRefused)
    {
        Point place = Point.FromMillimeters(300, y);
        Piece band = TestPieces.Rectangle("band", 300, 60, "1") with { Notches = [new Notch("", place, place)] };
        Assert.Equal(isRefused, !LayRules.TaskFor(TestCloths.Folded with { Nap = Nap.OneWay }, [new(band, "M", 2)]).Impossible.IsEmpty);
    }

    [Fact]
    public void Garments_of_two_sizes_are_not_counted_together()
    {
        Piece band = TestPieces.Rectangle("band", 300, 60, "1");
        Assert.Equal(2, LayRules.TaskFor(TestCloths.Folded, [new(band, "S", 1), new(band, "M", 1)]).Impossible.Length);
    }

    // By hand: 0 0, 300 0, 280 200, 0 150 has (300 x 200 + 280 x 150) / 2 = 51,000 square mm and is 200 deep; the whole is twice that.
    [Fact]
    public void Cut_1_on_fold_on_open_cloth_is_the_whole_piece_from_one_layer()
    {
        Demand demand = TaskFor(TestCloths.Open, "1 on fold", 1).Demands.Single();
        Assert.Equal((1, FoldContact.Free), (demand.Layers, demand.Contact));
        Assert.Equal(2 * 51_000.0, demand.Piece.CuttingLine.AreaSquareMillimeters);
        Assert.Equal(400_000, demand.Piece.CuttingLine.Bounds.Height);
    }

    [Fact]
    public void A_half_on_the_fold_may_lie_end_for_end_where_half_turns_are_allowed()
    {
        Demand demand = TaskFor(TestCloths.Folded, "1 on fold", 1).Demands.Single();
        Assert.Equal([Turn.None, new Turn(Angle.Half, Facing.Flipped)], demand.Turns.AsEnumerable());
        Assert.All(demand.Turns, turn => Assert.Equal(0, turn.Apply(demand.Piece.CuttingLine).Bounds.MinY));
    }

    [Fact]
    public void A_half_on_the_fold_of_one_way_cloth_has_one_turn_and_no_tilt()
    {
        Cloth cloth = TestCloths.Folded with { Nap = Nap.OneWay, Tilt = Angle.FromDegrees(2) };
        Assert.Equal([Turn.None], TaskFor(cloth, "1 on fold", 1).Demands.Single().Turns.AsEnumerable());
    }

    [Fact]
    public void Only_cloth_with_nap_by_size_groups_placements_and_it_does_by_size()
    {
        Piece piece = TestPieces.Rectangle("band", 300, 60, "1");
        PieceOrder[] orders = [new(piece, "S", 1), new(piece, "M", 1)];
        Assert.Equal(["S", "M"], NapGroups(Nap.BySize));
        Assert.Equal(["", ""], NapGroups(Nap.None));
        Assert.Equal(["", ""], NapGroups(Nap.OneWay));

        IEnumerable<string> NapGroups(Nap nap) =>
            LayRules.TaskFor(TestCloths.Open with { Nap = nap }, orders).Demands.Select(demand => demand.NapGroup);
    }

    [Fact]
    public void A_job_without_sizes_is_one_nap_group() =>
        Assert.NotEqual("", TaskFor(TestCloths.Open with { Nap = Nap.BySize }, "1", 1).Demands.Single().NapGroup);

    [Fact]
    public void Demands_keep_the_order_of_the_job()
    {
        Piece first = TestPieces.Rectangle("first", 100, 60, "2");
        Piece second = TestPieces.Rectangle("second", 400, 300, "1");
        LayTask task = LayRules.TaskFor(TestCloths.Open, [new(first, "S", 1), new(first, "M", 1), new(second, "S", 1)]);
        Assert.Equal(
            ["first S 1", "first S 2", "first M 1", "first M 2", "second S 1"],
            task.Demands.Select(demand => $"{demand.Piece.Name} {demand.Size} {demand.Copy}"));
    }

    [Fact]
    public void The_gap_of_the_cloth_is_the_gap_of_the_task() =>
        Assert.Equal(Length.FromMillimeters(3), LayRules.TaskFor(TestCloths.Open with { Gap = Length.FromMillimeters(3) }, []).Gap);

    private static LayTask TaskFor(Cloth cloth, string cut, int garments) =>
        LayRules.TaskFor(cloth, [new(TestPieces.Of("piece", "0 0, 300 0, 280 200, 0 150", cut), "", garments)]);

    private static string Demands(Cloth cloth, string cut, int garments) => string.Join(", ", TaskFor(cloth, cut, garments).Demands
        .Select(demand => $"{demand.Copy} x{demand.Layers} {demand.Turns[0].Facing} {demand.Contact}"));
}
