using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Nesting;

public sealed class LayRulesReasonsTests
{
    [Fact]
    public void A_single_piece_on_folded_cloth_is_refused_with_two_remedies() => Check(
        TestCloths.Folded, TestPieces.Rectangle("yoke", 400, 200, "1"),
        "yoke M is cut once, and on folded cloth a single piece would come out twice; lay the cloth open, or cut 2.");

    [Fact]
    public void An_odd_count_on_folded_cloth_is_refused() => Check(
        TestCloths.Folded, TestPieces.Rectangle("tab", 80, 40, "3"),
        "tab M is cut 3, and folded cloth gives two at a time; lay the cloth open, or cut an even number.");

    [Theory]
    [InlineData(GrainRule.Across, "across it")]
    [InlineData(GrainRule.Bias, "at 45 degrees to it")]
    public void A_fold_that_does_not_follow_the_grain_is_refused(GrainRule grain, string words) => Check(
        TestCloths.Folded, TestPieces.Of("skirt", "0 0, 300 0, 300 200, 0 200", "1 on fold", grain),
        $"skirt M lies on the lengthwise fold but wants its grain {words}; lay the cloth open, where it is cut unfolded.");

    // By hand: 138 cm usable, folded 69. A half 72.3 deep needs 144.6 usable, 146.6 with selvages; 150 cm is sold (references/trade.md 1.1).
    [Fact]
    public void A_half_deeper_than_the_folded_lay_is_told_the_width_that_is_enough() => Check(
        TestCloths.Folded, TestPieces.Rectangle("front", 600, 723, "1 on fold"),
        "front M is 72.3 cm deep, the folded lay only 69 cm; it fits on cloth at least 146.6 cm wide (usual: 150 cm).");

    // By hand: (144.6 + 2) / 0.95 = 154.32 cm before the wash, rounded up.
    [Fact]
    public void The_width_that_is_enough_counts_shrinkage() => Check(
        TestCloths.Folded with { WidthShrinkageRatio = 0.05 }, TestPieces.Rectangle("front", 600, 723, "1 on fold"),
        "front M is 72.3 cm deep, the folded lay only 65.5 cm; it fits on cloth at least 154.4 cm wide (usual: 160 cm).");

    [Fact]
    public void A_pair_deeper_than_the_folded_lay_may_fit_on_the_same_cloth_laid_open() => Check(
        TestCloths.Folded, TestPieces.Rectangle("cape", 600, 800, "1 pair"),
        "cape M is 80 cm deep, the folded lay only 69 cm; it fits on this cloth laid open, or on cloth at least 162 cm wide, which is more than is usual: divide the piece with a seam.");

    [Fact]
    public void A_piece_wider_than_open_cloth_is_refused_too() => Check(
        TestCloths.Open, TestPieces.Rectangle("veil", 1000, 1500, "1"),
        "veil M is 150 cm deep, the cloth only 138 cm; it fits on cloth at least 152 cm wide (usual: 160 cm).");

    // By hand: 28 in deep, 45 in cloth less 2 x 1/2 in, folded: 22 in. Needs 56 + 1 = 57 in; 60 in is sold (references/trade.md 1.1).
    [Fact]
    public void Reasons_speak_in_inches_where_the_job_does()
    {
        Cloth cloth = TestCloths.Folded with { Width = Length.FromInches(45), Selvage = Length.FromInches(0.5) };
        PieceOrder order = new(TestPieces.Rectangle("front", 600, 28 * 25.4, "1 on fold"), "", 1);
        LayTask task = LayRules.TaskFor(cloth, LaySurface.Of(cloth), [order], LengthWords.WordingOf(MeasureSystem.Imperial), _ => Layering.TwoLayers);
        Assert.Equal("front is 28\" deep, the folded lay only 22\"; it fits on cloth at least 57\" wide (usual: 60\").", task.Impossible.Single().Reason);
    }

    [Fact]
    public void A_piece_a_hair_deeper_than_the_lay_never_reads_as_equally_deep() => Check(
        TestCloths.Folded, TestPieces.Rectangle("front", 600, 690.001, "1 on fold"),
        "front M is 69.1 cm deep, the folded lay only 69 cm; it fits on cloth at least 140.1 cm wide (usual: 150 cm).");

    [Fact]
    public void A_piece_exactly_as_deep_as_the_lay_fits() =>
        Assert.Empty(LayRules.TaskFor(TestCloths.Folded, [new(TestPieces.Rectangle("front", 600, 690, "1 on fold"), "M", 1)]).Impossible);

    [Fact]
    public void Turns_in_which_a_piece_is_too_deep_are_left_out()
    {
        Piece band = TestPieces.Of("band", "0 0, 1500 0, 1500 60, 0 60", "1", GrainRule.Any);
        Assert.Equal([0, 180], LayRules.TaskFor(TestCloths.Open, [new(band, "", 1)]).Demands.Single().Turns.Select(turn => turn.Angle.TotalDegrees));
    }

    [Fact]
    public void What_cannot_lie_leaves_no_demand_and_the_rest_is_laid()
    {
        LayTask task = LayRules.TaskFor(TestCloths.Folded, [new(TestPieces.Rectangle("yoke", 400, 200, "1"), "", 1), new(TestPieces.Rectangle("tab", 80, 40, "2"), "", 1)]);
        Assert.Equal("tab", task.Demands.Single().Piece.Name);
        Assert.Equal("yoke", task.Impossible.Single().Piece);
    }

    private static void Check(Cloth cloth, Piece piece, string expected)
    {
        LayTask task = LayRules.TaskFor(cloth, [new(piece, "M", 1)]);
        Assert.Empty(task.Demands);
        Assert.Equal(new Unplaced(piece.Name, "M", expected), task.Impossible.Single());
    }
}
