using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using static Nestmark.Tests.Pieces.Alterations.Altered;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>Widening, narrowing, lengthening and shortening. Worked values: references/trade.md 8.</summary>
public sealed class StripTests
{
    /// <summary>A half skirt panel: fold along x from A to B, grain along x, hem D-A at x = 0 slanting to the side.</summary>
    private static readonly PieceDraft Half = Drafts.Of("0 0, 600 0, 580 180, 20 250").OnFold("A-B").WithNotch("side", "300 215") with { Lines = [new PieceLine("knee", Drafts.Places("300 0, 300 300"))] };

    private static readonly PieceDraft Sleeve = Drafts.Of("0 0, 400 40, 400 260, 0 300") with { Grainline = Drafts.Line("50 150, 350 150") };

    [Theory]
    [InlineData(20)]
    [InlineData(1)]
    public void Moved_off_the_fold_the_whole_gains_twice_the_amount(double by)
    {
        // trade.md 8, "Shift from a fold": x away from the fold gains 2x in all.
        PieceDraft wide = Good(Widening.AtFold(Half, Mm(by), SideTruing.AsCut));
        Assert.Equal("A-B", wide.FoldEdge);
        Assert.Equal(Area(Half) + by * 600, Area(wide), 0.001);
        Piece before = Unfolding.Unfold(Half.Made());
        Piece after = Unfolding.Unfold(wide.Made());
        Assert.Equal(before.SeamLine.Bounds.Height + 2000 * by, after.SeamLine.Bounds.Height);
    }

    [Fact]
    public void Set_over_the_fold_the_whole_loses_twice_the_amount_and_the_corners_slide_along_the_fold()
    {
        PieceDraft narrow = Good(Narrowing.AtFold(Half, Mm(10), SideTruing.AsCut));
        // At 10 mm off the fold the hem has slanted in by 20 / 250 · 10 and the top by 20 / 180 · 10.
        Assert.Equal("A 0.8 0, B 598.889 0, C 580 170, D 20 240", narrow.Corners());
        Assert.Equal(Unfolding.Unfold(Half.Made()).SeamLine.Bounds.Height - 20_000, Unfolding.Unfold(narrow.Made()).SeamLine.Bounds.Height);
    }

    [Theory]
    [InlineData(SideTruing.AsCut)]
    [InlineData(SideTruing.Smooth)]
    public void Widened_and_narrowed_by_the_same_it_is_as_it_was(SideTruing truing)
    {
        PieceDraft wide = Good(Widening.AtFold(Half, Mm(30), truing));
        SameOutline(Half, Good(Narrowing.AtFold(wide, Mm(30), SideTruing.AsCut)), truing == SideTruing.AsCut ? 0.1 : 5000);
        AlterLine line = new LevelLine("D", "", Mm(120));
        PieceDraft wideAtLine = Good(Widening.AtLine(Half, line, Mm(30), truing));
        Assert.Equal(Half.Made().SeamLine.Bounds.Height + 30_000, wideAtLine.Made().SeamLine.Bounds.Height);
    }

    [Fact]
    public void Lengthened_at_a_line_a_straight_side_stays_straight_and_the_ends_stay_as_wide()
    {
        PieceDraft longer = Good(Lengthening.Apply(Sleeve, new LevelLine("A", "", Mm(200)), Mm(50), SideTruing.Smooth));
        Assert.Equal("A 0 0, B 450 40, C 450 260, D 0 300", longer.Corners());
        // A trapezoid: (220 + 300) / 2 · 450.
        Assert.Equal(260 * 450, Area(longer), 0.01);
        Assert.Equal(4, longer.Outline.Length);
    }

    [Fact]
    public void Left_as_cut_the_strip_is_as_wide_as_the_piece_at_the_line()
    {
        PieceDraft longer = Good(Lengthening.Apply(Sleeve, new LevelLine("A", "", Mm(200)), Mm(50), SideTruing.AsCut));
        // At 200 of 400 the piece is 260 wide.
        Assert.Equal(260 * 400 + 260 * 50, Area(longer), 0.01);
        SameOutline(Sleeve, Good(Shortening.Apply(longer, new LevelLine("A", "", Mm(200)), Mm(50), SideTruing.AsCut)), 0.1);
    }

    [Fact]
    public void Shortening_takes_the_strip_beyond_the_line_and_what_is_drawn_follows()
    {
        PieceDraft marked = Sleeve with
        {
            Marks = [new PieceMark("button", Drafts.Places("350 100")[0]), new PieceMark("cuff", Drafts.Places("20 100")[0])],
            Lines = [new PieceLine("crease", Drafts.Places("10 100, 390 100"))],
            Notches = [new PieceMark("back", Drafts.Places("300 30")[0])],
        };
        PieceDraft shorter = Good(Shortening.Apply(marked, new LevelLine("head", "", Mm(300)), Mm(80), SideTruing.Smooth));
        Assert.Equal("A 0 0, B 320 40, C 320 260, D 0 300", shorter.Corners());
        Assert.Equal(["270 100", "20 100"], shorter.Marks.Select(mark => $"{mark.Place.XMillimeters} {mark.Place.YMillimeters}"));
        Assert.Equal((310, 10), (shorter.Lines[0].Points[^1].XMillimeters, shorter.Lines[0].Points[0].XMillimeters));
        Assert.Equal(270, shorter.Grainline!.End.XMillimeters);
        // Three quarters along the side before, and after.
        Assert.Equal(240, shorter.Notches[0].Place.XMillimeters, 0.01);
        Assert.Equal(30, shorter.Notches[0].Place.YMillimeters, 0.01);
    }

    [Fact]
    public void Straight_sides_cut_across_a_curve_and_smooth_ones_keep_it()
    {
        PieceDraft curved = Drafts.Of("0 0, 200 30, 400 0, 400 260, 0 260") with { Grainline = Drafts.Line("50 150, 350 150") };
        AlterLine line = new LevelLine("A", "", Mm(100));
        PieceDraft smooth = Good(Lengthening.Apply(curved, line, Mm(100), SideTruing.Smooth));
        PieceDraft straight = Good(Lengthening.Apply(curved, line, Mm(100), SideTruing.Straight));
        Assert.Equal(500 * 260, Area(straight), 0.01);
        // The hollow is stretched with its edge: a triangle 30 deep on 500.
        Assert.Equal(500 * 260 - 500 * 30 / 2, Area(smooth), 0.01);
    }

    [Fact]
    public void Shortening_past_a_corner_is_refused_with_the_most_that_works()
    {
        AlterationFault fault = Refused(Shortening.Apply(Sleeve, new LevelLine("A", "", Mm(250)), Mm(180), SideTruing.Smooth));
        Assert.NotNull(fault.Largest);
        Assert.Equal(150, fault.Largest.Value.TotalMillimeters, 0.02);
        Good(Shortening.Apply(Sleeve, new LevelLine("A", "", Mm(250)), fault.Largest.Value, SideTruing.Smooth));
    }

    [Fact]
    public void A_line_by_name_and_one_between_places_are_the_same_line()
    {
        PieceDraft byName = Good(Lengthening.Apply(Half, new DrawnLine("knee"), Mm(40), SideTruing.Smooth));
        PieceDraft byDistance = Good(Lengthening.Apply(Half, new LevelLine("A", "B", Mm(300)), Mm(40), SideTruing.Smooth));
        PieceDraft byPlaces = Good(Lengthening.Apply(Half, new LineBetween(AlterPlace.AtShare("A-B", 0.5), AlterPlace.Named("side")), Mm(40), SideTruing.Smooth));
        Assert.Equal(byName.Corners(), byDistance.Corners());
        Assert.Equal(byName.Corners(), byPlaces.Corners());
        Assert.Equal("A 0 0, B 640 0, C 620 180, D 20 250", byName.Corners());
    }

    [Fact]
    public void What_is_not_there_is_named()
    {
        Assert.StartsWith("No line hip", Refused(Lengthening.Apply(Half, new DrawnLine("hip"), Mm(40), SideTruing.Smooth)).What, StringComparison.Ordinal);
        Assert.StartsWith("There is no corner Q", Refused(Lengthening.Apply(Half, new LevelLine("Q", "", Mm(4)), Mm(40), SideTruing.Smooth)).What, StringComparison.Ordinal);
        AlterationFault misses = Refused(Lengthening.Apply(Half, new LevelLine("A", "", Mm(4000)), Mm(40), SideTruing.Smooth));
        Assert.Equal("The line does not cross the piece.", misses.What);
        Assert.Null(misses.Largest);
        Assert.StartsWith("The piece is not cut on the fold", Refused(Widening.AtFold(Sleeve, Mm(4), SideTruing.AsCut)).What, StringComparison.Ordinal);
        Assert.StartsWith("The line runs the way", Refused(Widening.AtLine(Half, new DrawnLine("knee"), Mm(40), SideTruing.Smooth)).What, StringComparison.Ordinal);
    }
}
