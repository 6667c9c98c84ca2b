using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class FoldTests
{
    /// <summary>Half a front, invented: fold edge D-A on the left, hem A-B, side B-C, top C-D.</summary>
    private const string HalfFront = "0 0, 250 0, 220 600, 0 600";

    [Fact]
    public void Fold_edge_lies_on_the_axis_and_has_no_allowance()
    {
        Piece piece = Drafts.Of(HalfFront, 15).OnFold("D-A").Made();
        Assert.Equal(Drafts.Line("0 0, 630 0"), piece.FoldEdge);
        Assert.Equal(0, piece.CuttingLine.Bounds.MinY);
        Assert.Equal(0, piece.SeamLine.Bounds.MinY);
        Assert.Equal(EdgeKind.Fold, piece.Edges.Single(edge => edge.Name == "D-A").Kind);
        Assert.Equal(Length.Zero, piece.Edges.Single(edge => edge.Name == "D-A").Allowance);
    }

    // references/trade.md 8: a half piece set x away from the fold gains 2x in all.
    [Fact]
    public void Widening_at_the_fold_adds_twice()
    {
        Piece narrow = Unfolding.Unfold(Drafts.Of(HalfFront, 15).OnFold("D-A").Made());
        Piece wide = Unfolding.Unfold(Drafts.Of("-40 0, 250 0, 220 600, -40 600", 15).OnFold("D-A").Made());
        Assert.Equal(narrow.CuttingLine.Bounds.Height + 2 * 40_000, wide.CuttingLine.Bounds.Height);
    }

    [Theory]
    [InlineData("0 600, 0 0")]
    [InlineData("0 0, 0 600")]
    [InlineData("0.9 599.5, -0.8 0.3")]
    public void A_drawn_fold_line_is_snapped_to_its_edge(string line)
    {
        Piece piece = (Drafts.Of(HalfFront, 15).OnFold("") with { FoldLine = Drafts.Line(line) }).Made();
        Assert.Equal(Drafts.Line("0 0, 630 0"), piece.FoldEdge);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(270)]
    [InlineData(33)]
    public void The_head_of_the_grainline_lies_toward_x_whichever_side_the_fold_is_on(double degrees)
    {
        // Drawn with the fold left and with the fold right: one garment, both heads up.
        PieceDraft left = Drafts.Of(HalfFront, 15).OnFold("") with { FoldLine = Drafts.Line("0 0, 0 600"), Grainline = Drafts.Line("100 100, 100 500") };
        PieceDraft right = Drafts.Of("0 0, 250 0, 250 600, 30 600", 15).OnFold("") with { FoldLine = Drafts.Line("250 0, 250 600"), Grainline = Drafts.Line("100 100, 100 500") };
        Turn turn = Turn.By(Angle.FromDegrees(degrees));
        Polygon[] shapes = [left.Turned(turn).Made().CuttingLine, right.Turned(turn).Made().CuttingLine];
        foreach (Polygon shape in shapes)
        {
            Assert.Equal(0, shape.Bounds.MinY);
            Assert.InRange(Clipping.TotalSquareMillimeters(Clipping.Difference(shape, shapes[0])), 0, 1);
            // The hem, wider than the top, lies left.
            Assert.True(shape.Outer.MaxBy(point => point.Y).X < shape.Bounds.Width / 4);
        }
    }

    [Theory]
    [InlineData("0 0, 300 0, 150 200", 53.130102)]
    [InlineData("0 0, 300 0, 300 200, -200 200", 135)]
    public void Beside_the_fold_the_cutting_line_runs_on_to_the_fold_line(string outline, double degrees)
    {
        // The opened piece has the offset of its edges there: b / sinθ beyond (or inside) the seam line, geometry.
        Piece piece = Drafts.Of(outline, 10).OnFold("A-B").Made();
        double run = 10_000 / Angle.FromDegrees(degrees).SineRatio;
        long seamStart = piece.SeamLine.Outer.Where(point => point.Y == 0).Min(point => point.X);
        Assert.Equal(Math.Round(run), seamStart - piece.FoldEdge!.Start.X, 1.0);
        Assert.Equal(0, piece.FoldEdge.Start.X);
    }

    [Fact]
    public void A_sharp_point_at_the_fold_is_cut_square_to_it()
    {
        Piece piece = (Drafts.Of("0 0, 600 0, 0 150", 10).OnFold("A-B") with { PointLimitRatio = 2.5 }).Made();
        Point tip = piece.Corners[1].Place;
        Assert.Equal(2, piece.CuttingLine.Outer.Count(point => point.X == tip.X + 25_000));
        Assert.Equal(tip.X + 25_000, piece.FoldEdge!.End.X);
    }

    [Fact]
    public void The_opened_piece_has_the_same_cutting_line_as_if_it_were_drawn_whole()
    {
        Piece opened = Unfolding.Unfold(Drafts.Of("0 0, 300 0, 260 150, 180 220, -60 200", 12).OnFold("A-B").Made());
        Piece whole = Drafts.Of("0 0, -60 -200, 180 -220, 260 -150, 300 0, 260 150, 180 220, -60 200", 12).Made();
        Polygon there = whole.CuttingLine.Shifted(new Point(opened.CuttingLine.Bounds.MinX, opened.CuttingLine.Bounds.MinY));
        Assert.InRange(Judge.DifferenceSquareMillimeters(Judge.ToNts(opened.CuttingLine), Judge.ToNts(there)), 0, 0.01);
    }

    [Fact]
    public void A_fold_edge_that_bends_a_little_is_straightened_with_a_note()
    {
        PieceDraft draft = Drafts.Of("0 0, 250 0, 220 600, 0 600, 0.06 300", 15).OnFold("D-A");
        Assert.Contains("is now straight", draft.Notes(), StringComparison.Ordinal);
        Assert.Equal(2, draft.Made().SeamLine.Outer.Count(point => point.Y == 0));
    }

    [Fact]
    public void A_short_fold_line_stands_for_its_whole_edge_with_a_note()
    {
        PieceDraft draft = Drafts.Of(HalfFront, 15).OnFold("") with { FoldLine = Drafts.Line("0 200, 0 400") };
        Assert.Contains("the whole edge lies on the fold", draft.Notes(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 0, 250 0, 220 600, 0 600, 8 300", "D-A", "bends more than 0.1 mm")]
    [InlineData("0 0, 250 0, 220 600, 0 600", "A-D", "There is no edge A-D to lie on the fold. The edges, counter-clockwise, are A-B, B-C, C-D, D-A.")]
    [InlineData("0 0, 250 0, 220 600, 0 600", "", "no fold edge is given")]
    [InlineData("0 0, 250 0, 250 -100, 400 -100, 400 600, 0 600", "F-A", "lies on both sides of it")]
    [InlineData("0 0, 100 0, 100 -1, 120 -1, 120 600, 0 600", "F-C", "There is no edge F-C")]
    public void A_fold_that_cannot_be_is_refused(string outline, string edge, string expected) =>
        Assert.Contains(expected, Drafts.Of(outline, 15).OnFold(edge).Refused(), StringComparison.Ordinal);

    [Theory]
    [InlineData("0 0, 250 600", "does not run along one edge")]
    [InlineData("50 0, 50 600", "does not run along one edge")]
    [InlineData("0 0, 0 0.5", "has no length")]
    public void A_fold_line_off_the_outline_is_refused(string line, string expected) =>
        Assert.Contains(expected, (Drafts.Of(HalfFront, 15).OnFold("") with { FoldLine = Drafts.Line(line) }).Refused(), StringComparison.Ordinal);

    [Fact]
    public void A_fold_edge_on_a_piece_that_is_not_cut_on_the_fold_is_refused() =>
        Assert.Contains("not cut on the fold", (Drafts.Of(HalfFront) with { FoldEdge = "D-A" }).Refused(), StringComparison.Ordinal);

    [Fact]
    public void An_allowance_on_the_fold_edge_is_refused() =>
        Assert.Contains("Edge D-A lies on the fold", Drafts.Of(HalfFront, 15).OnFold("D-A").WithEdge("D-A", 15).Refused(), StringComparison.Ordinal);

    [Fact]
    public void An_allowance_that_reaches_the_fold_line_elsewhere_is_refused() =>
        Assert.Contains("reaches the fold line apart from the fold edge",
            Drafts.Of("0 0, 300 0, 300 100, 500 100, 500 5, 600 5, 600 200, 0 200", 10).OnFold("A-B").Refused(), StringComparison.Ordinal);

    [Fact]
    public void A_grainline_that_is_not_parallel_to_the_fold_is_refused_unless_grain_does_not_matter()
    {
        PieceDraft draft = Drafts.Of(HalfFront, 15).OnFold("D-A") with { Grainline = Drafts.Line("100 100, 101 400") };
        Assert.Contains("not parallel to the fold edge", draft.Refused(), StringComparison.Ordinal);
        Piece piece = (draft with { Grain = GrainRule.Any }).Made();
        Assert.Equal(piece.Grainline.Start.Y, piece.Grainline.End.Y);
    }
}
