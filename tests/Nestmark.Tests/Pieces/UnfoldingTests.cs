using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class UnfoldingTests
{
    private static readonly PieceDraft HalfFront = Drafts.Of("0 0, 250 0, 220 600, 0 540", 15).OnFold("D-A");

    [Fact]
    public void The_opened_piece_is_exactly_twice_the_half_and_symmetric()
    {
        Piece half = HalfFront.Made();
        Piece whole = Unfolding.Unfold(half);
        Assert.Equal(2 * half.CuttingLine.TwiceArea, whole.CuttingLine.TwiceArea);
        Assert.Equal(2 * half.SeamLine.TwiceArea, whole.SeamLine.TwiceArea);
        Assert.Equal(Sorted(whole.CuttingLine, y => y), Sorted(whole.CuttingLine, y => -y));
        Assert.True(Judge.ToNts(whole.CuttingLine).IsValid);
    }

    [Fact]
    public void No_vertex_is_left_on_the_old_fold_but_a_real_corner()
    {
        Piece whole = Unfolding.Unfold(HalfFront.Made());
        // The hem passes straight over the fold; the neck has its point there.
        Assert.Equal(Drafts.Text([whole.CenterLine!.End]), Drafts.Text(whole.CuttingLine.Outer.Where(point => point.Y == 0)));
    }

    [Fact]
    public void Letters_of_the_mirror_image_have_a_prime()
    {
        Piece whole = Unfolding.Unfold(Drafts.Of("0 0, 250 0, 220 600, 0 400", 15).OnFold("D-A").Made());
        Assert.Equal("B C D B′ C′", string.Join(" ", whole.Corners.Select(corner => corner.Letter)));
        Assert.Equal("B′-B B-C C-D B′-C′ C′-D", string.Join(" ", whole.Edges.Select(edge => edge.Name)));
    }

    [Fact]
    public void Opened_edges_are_as_long_as_the_opened_seam_line()
    {
        Piece whole = Unfolding.Unfold(HalfFront.Made());
        Assert.Equal(whole.SeamLine.PerimeterMillimeters, whole.Edges.Sum(edge => edge.SeamLineLength.TotalMillimeters), 0.01);
        Assert.Equal(500, whole.Edges[0].SeamLineLength.TotalMillimeters, 0.001);
    }

    [Fact]
    public void Fold_becomes_center_line_and_the_count_stays()
    {
        Piece half = (HalfFront with { Cut = new CutQuantity(2, CutKind.OnFold) }).Made();
        Piece whole = Unfolding.Unfold(half);
        Assert.Null(whole.FoldEdge);
        Assert.Equal(half.FoldEdge, whole.CenterLine);
        Assert.Equal(new CutQuantity(2, CutKind.Copies), whole.Cut);
    }

    [Fact]
    public void Marks_lines_and_notches_are_mirrored_and_those_on_the_fold_are_not_doubled()
    {
        PieceDraft draft = HalfFront.WithNotch("hip", "240 200").WithNotch("middle", "0 0") with
        {
            Marks = [new PieceMark("button", Drafts.Places("0 300")[0]), new PieceMark("pocket", Drafts.Places("90 300")[0])],
            Lines = [new PieceLine("dart", Drafts.Places("100 500, 110 400")), new PieceLine("middle", Drafts.Places("0 100, 0 200"))],
        };
        Piece whole = Unfolding.Unfold(draft.Made());
        Assert.Equal("hip middle hip", string.Join(" ", whole.Notches.Select(notch => notch.Name)));
        Assert.Equal("button pocket pocket", string.Join(" ", whole.Marks.Select(mark => mark.Label)));
        Assert.Equal("dart middle dart", string.Join(" ", whole.Lines.Select(line => line.Label)));
        Assert.Equal(whole.Notches[0].OnCuttingLine with { Y = -whole.Notches[0].OnCuttingLine.Y }, whole.Notches[2].OnCuttingLine);
    }

    [Fact]
    public void Half_a_circle_opens_to_a_circle_with_one_corner()
    {
        IEnumerable<OutlineVertex> arc = Enumerable.Range(0, 91).Select(i => Angle.FromDegrees(2 * i)).Select(angle =>
            new OutlineVertex(Point.FromMillimeters(100 * angle.CosineRatio, 100 * angle.SineRatio), angle.TotalDegrees is 0 or 180 ? VertexKind.Joint : VertexKind.Curve));
        Piece whole = Unfolding.Unfold(Drafts.Of(arc, 10).OnFold("A-B").Made());
        Assert.Single(whole.Corners);
        Assert.Equal(whole.SeamLine.PerimeterMillimeters, Assert.Single(whole.Edges).SeamLineLength.TotalMillimeters, 0.01);
        Assert.True(Judge.ToNts(whole.CuttingLine).IsValid);
    }

    [Fact]
    public void A_piece_without_a_fold_edge_cannot_be_unfolded() =>
        Assert.Throws<ArgumentException>(() => Unfolding.Unfold(Drafts.Of("0 0, 100 0, 100 50").Made()));

    private static string Sorted(Polygon polygon, Func<long, long> y) => Drafts.Text(polygon.Outer.Select(point => point with { Y = y(point.Y) }).Order());
}
