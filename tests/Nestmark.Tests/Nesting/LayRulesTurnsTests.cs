using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

public sealed class LayRulesTurnsTests
{
    // references/trade.md 5: nap none, any half turn [MM]; one-way, all one way [VN p.20]; by size, one garment one way [VN p.231-233].
    [Theory]
    [InlineData(Nap.None, GrainRule.Along, "0 180")]
    [InlineData(Nap.BySize, GrainRule.Along, "0 180")]
    [InlineData(Nap.OneWay, GrainRule.Along, "0")]
    [InlineData(Nap.None, GrainRule.Across, "90 270")]
    [InlineData(Nap.BySize, GrainRule.Across, "90 270")]
    [InlineData(Nap.OneWay, GrainRule.Across, "90")]
    [InlineData(Nap.None, GrainRule.Bias, "45 135 225 315")]
    [InlineData(Nap.BySize, GrainRule.Bias, "45 225")]
    [InlineData(Nap.OneWay, GrainRule.Bias, "45")]
    [InlineData(Nap.None, GrainRule.Any, "0 90 180 270")]
    [InlineData(Nap.OneWay, GrainRule.Any, "0 90 180 270")]
    public void Turns_follow_nap_and_grain(Nap nap, GrainRule grain, string expected) =>
        Assert.Equal(expected, Degrees(AllowedTurns.For(nap, grain, Angle.Zero, Facing.Plain)));

    [Fact]
    public void Tilt_adds_itself_and_half_of_it_both_ways_round() =>
        Assert.Equal("0 2 358 1 359", Degrees(AllowedTurns.For(Nap.OneWay, GrainRule.Along, Angle.FromDegrees(2), Facing.Plain)));

    [Fact]
    public void Tilt_of_the_piece_goes_before_that_of_the_cloth()
    {
        Cloth leaning = TestCloths.Open with { Nap = Nap.OneWay, Tilt = Angle.FromDegrees(2) };
        Piece strict = TestPieces.Of("strict", "0 0, 100 0, 100 50, 0 50", "1", tiltDegrees: 0);
        Piece loose = TestPieces.Of("loose", "0 0, 100 0, 100 50, 0 50", "1");
        LayTask task = LayRules.TaskFor(leaning, [new(strict, "", 1), new(loose, "", 1)]);
        Assert.Equal([1, 5], task.Demands.Select(demand => demand.Turns.Length));
    }

    [Fact]
    public void Tilt_beyond_45_degrees_is_the_callers_mistake() =>
        Assert.Throws<ArgumentException>(() => AllowedTurns.For(Nap.None, GrainRule.Along, Angle.FromDegrees(46), Facing.Plain));

    /// <summary>
    /// Geometry, no source: cloth folded right sides together shows the nap of both layers running one way (references/trade.md 4.1).
    /// What lies under a plain piece is its mirror image about the x axis; every turn of a flipped copy must be such an image of a plain turn.
    /// </summary>
    [Theory]
    [InlineData(GrainRule.Along)]
    [InlineData(GrainRule.Across)]
    [InlineData(GrainRule.Bias)]
    [InlineData(GrainRule.Any)]
    public void Flipped_copies_lie_as_the_lower_layer_of_a_folded_lay_does(GrainRule grain)
    {
        Point probe = new(300, 70);
        Assert.All(Enum.GetValues<Nap>(), nap =>
        {
            IEnumerable<Point> below = AllowedTurns.For(nap, grain, Angle.FromDegrees(3), Facing.Plain)
                .Select(turn => turn.Apply(probe)).Select(point => new Point(point.X, -point.Y)).Order();
            IEnumerable<Point> flipped = AllowedTurns.For(nap, grain, Angle.FromDegrees(3), Facing.Flipped)
                .Select(turn => turn.Apply(probe)).Order();
            Assert.Equal(below, flipped);
        });
    }

    [Fact]
    public void A_pair_across_one_way_cloth_turns_its_two_copies_opposite_ways()
    {
        Piece cuff = TestPieces.Of("cuff", "0 0, 200 0, 200 80, 0 80", "1 pair", GrainRule.Across);
        LayTask task = LayRules.TaskFor(TestCloths.Open with { Nap = Nap.OneWay }, [new(cuff, "", 1)]);
        Assert.Equal(["90 deg Plain", "270 deg Flipped"], task.Demands.Select(demand => $"{demand.Turns.Single().Angle} {demand.Turns.Single().Facing}"));
    }

    [Fact]
    public void Every_one_way_turn_heads_one_way_and_the_other_after_half_a_turn() =>
        Gen.Select(Gen.Double[0, 44.9], Gen.Int[0, 2], Gen.Bool).Check(500, (tilt, grainIndex, flipped) =>
        {
            Facing facing = flipped ? Facing.Flipped : Facing.Plain;
            Assert.All(AllowedTurns.For(Nap.OneWay, (GrainRule)grainIndex, Angle.FromDegrees(tilt), facing), turn =>
            {
                Assert.Equal(0, NapHeading.Of(turn));
                Assert.Equal(1, NapHeading.Of(turn with { Angle = turn.Angle + Angle.Half }));
            });
        });

    [Fact]
    public void End_for_end_on_the_fold_is_against_the_nap() =>
        Assert.Equal([0, 1], AllowedTurns.OnFold(LaySurface.Folded(Length.FromCentimeters(138)), Nap.BySize, GrainRule.Along).Select(NapHeading.Of));

    private static string Degrees(IEnumerable<Turn> turns) => string.Join(' ', turns.Select(turn => turn.Angle.TotalDegrees));
}
