using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using static Nestmark.Tests.Pieces.Alterations.Altered;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>Corners, edges, seams and strips moved or added. Plain geometry; references/trade.md 8 and 3.3 where named.</summary>
public sealed class ShapeTests
{
    private static readonly PieceDraft Panel = Drafts.Of("0 0, 600 0, 600 200, 0 200") with { Grainline = Drafts.Line("50 20, 550 20") };

    /// <summary>A bodice: waist C-D at x = 0, 160 wide, sides spreading by 1 in 10 upward.</summary>
    private static readonly PieceDraft Bodice = Drafts.Of("0 20, 200 0, 200 200, 0 180") with { Grainline = Drafts.Line("20 100, 180 100") };

    [Fact]
    public void A_corner_moves_alone_and_straight_edges_stay_straight()
    {
        PieceDraft moved = Good(CornerMoving.Apply(Panel, "C", Mm(30), Mm(-20)));
        Assert.Equal("A 0 0, B 600 0, C 630 180, D 0 200", moved.Corners());
        Assert.Equal(4, moved.Outline.Length);
    }

    [Fact]
    public void An_edge_moves_whole_and_by_as_much_outward_as_each_edge_of_a_seam_gets()
    {
        // trade.md 8 [CWU17]: + 4 cm over two side seams are 2 cm a seam and 1 cm an edge.
        const double Girth = 40;
        double edge = Girth / 2 / 2;
        PieceDraft wide = Good(EdgeMoving.Outward(Panel, "C-D", Mm(edge)));
        Assert.Equal("A 0 0, B 600 0, C 600 210, D 0 210", wide.Corners());
        PieceDraft back = Good(EdgeMoving.Outward(wide, "C-D", Mm(-edge)));
        SameOutline(Panel, back, 0.01);
        Assert.Equal("A 0 0, B 600 0, C 610 205, D 10 205", Good(EdgeMoving.Apply(Panel, "C-D", Mm(10), Mm(5))).Corners());
    }

    [Fact]
    public void A_raised_waist_follows_the_sides_or_stays_as_narrow_as_the_old_line()
    {
        PieceDraft sides = Good(SeamMoving.Apply(Bodice, "C-D", Mm(-50), SeamKeeping.Sides));
        // 50 up, each side has spread by 5.
        Assert.Equal("A 200 0, B 200 200, C 50 185, D 50 15", sides.Corners());
        PieceDraft narrow = Good(SeamMoving.Apply(Bodice, "C-D", Mm(-50), SeamKeeping.Length));
        Assert.Equal("A 200 0, B 200 200, C 50 180, D 50 20", narrow.Corners());
        Assert.Equal(Edge(Bodice, "C-D"), Edge(narrow, "C-D"), 0.001);
    }

    [Fact]
    public void A_lowered_waist_runs_the_sides_on_and_opposite_amounts_meet()
    {
        // trade.md 8: bodice and skirt change by opposite amounts. The skirt's waist B-C is at its top.
        PieceDraft bodice = Good(SeamMoving.Apply(Bodice, "C-D", Mm(30), SeamKeeping.Sides));
        Assert.Equal("A 200 0, B 200 200, C -30 177, D -30 23", bodice.Corners());
        PieceDraft skirt = Drafts.Of("0 0, 300 20, 300 180, 0 200") with { Grainline = Drafts.Line("20 100, 280 100") };
        PieceDraft shorter = Good(SeamMoving.Apply(skirt, "B-C", Mm(-30), SeamKeeping.Sides));
        double before = Bodice.Made().SeamLine.Bounds.Width + skirt.Made().SeamLine.Bounds.Width;
        Assert.Equal(before, bodice.Made().SeamLine.Bounds.Width + shorter.Made().SeamLine.Bounds.Width);
    }

    [Fact]
    public void Raising_past_the_end_is_refused_with_the_most_that_works()
    {
        AlterationFault fault = Refused(SeamMoving.Apply(Bodice, "C-D", Mm(-400), SeamKeeping.Length));
        Assert.Equal(200, fault.Largest!.Value.TotalMillimeters, 0.2);
    }

    [Fact]
    public void A_hem_in_one_with_the_piece_turns_up_onto_it()
    {
        // trade.md 3.3 [FS-TRUE]: leg 40 cm at the hem fold, 1 cm a side narrower per 10 cm toward the hem, hem 4 cm: reflected 40.8, run on 39.2.
        PieceDraft leg = Drafts.Of("0 0, 500 -50, 500 450, 0 400") with { Grainline = Drafts.Line("50 200, 450 200") };
        PieceDraft reflected = Good(WidthAdding.Apply(leg, "C-D", Mm(40), StripEnds.Reflected, "hem"));
        Assert.Equal(408, Edge(reflected, "C-D"), 0.01);
        Assert.Equal(392, Edge(Good(WidthAdding.Apply(leg, "C-D", Mm(40), StripEnds.AlongSides, "hem")), "C-D"), 0.01);
        PieceDraft square = Good(WidthAdding.Apply(leg, "C-D", Mm(40), StripEnds.Square, "hem"));
        Assert.Equal(400, Edge(square, "C-D"), 0.01);
        Assert.Equal(Area(leg) + 400 * 40, Area(square), 0.01);
        Assert.Equal(("hem", 400.0), (square.Lines[0].Label, square.Lines[0].Points[0].DistanceTo(square.Lines[0].Points[^1]).TotalMillimeters));
    }

    [Fact]
    public void A_facing_along_a_curve_is_as_wide_everywhere()
    {
        PieceDraft neck = Drafts.Of("0 0, 300 0, 300 100, 250 95, 200 80, 150 55, 100 20");
        PieceDraft faced = Good(WidthAdding.Apply(neck, "C-A", Mm(20), StripEnds.Square, "facing"));
        Point[] outer = [.. faced.Outline.Select(vertex => vertex.Point).SkipWhile(point => point != faced.Corners[2].Place).TakeWhile(point => point != faced.Corners[0].Place)];
        Assert.Equal(5, outer.Length);
        Assert.All(outer.Zip(outer.Skip(1)), pair => Assert.Equal(
            20_000, Judge.DistanceToOutline(Shape(neck), (pair.First.X + pair.Second.X) / 2.0, (pair.First.Y + pair.Second.Y) / 2.0), 2.0));
    }

    [Fact]
    public void A_moved_corner_that_crosses_the_outline_is_refused()
    {
        AlterationFault fault = Refused(CornerMoving.Apply(Panel, "C", Mm(0), Mm(-300)));
        Assert.Equal("The outline would cross or touch itself.", fault.What);
        Assert.InRange(fault.Largest!.Value.TotalMillimeters, 199, 200.01);
        Assert.StartsWith("The corners, counter-clockwise, are A, B", Refused(CornerMoving.Apply(Panel, "X", Mm(1), Mm(1))).Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_corner_on_the_fold_stays_on_it()
    {
        PieceDraft half = Panel.OnFold("A-B") with { Grainline = null };
        Assert.Equal("A 10 0, B 600 0, C 600 200, D 0 200", Good(CornerMoving.Apply(half, "A", Mm(10), Mm(0))).Corners());
        Assert.StartsWith("The fold edge A-B would no longer run", Refused(CornerMoving.Apply(half, "A", Mm(0), Mm(10))).What, StringComparison.Ordinal);
    }
}
