using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class LetterTests
{
    [Theory]
    [InlineData("0 0, 40 0, 40 30, 0 30", "A 0 0, B 40 0, C 40 30, D 0 30")]
    [InlineData("0 30, 40 30, 40 0, 0 0", "A 0 0, B 40 0, C 40 30, D 0 30")]
    [InlineData("10 0, 40 10, 0 30", "A 10 0, B 40 10, C 0 30")]
    public void Letters_run_counter_clockwise_from_the_lowest_left_corner(string outline, string expected) => Assert.Equal(expected, Letters(Drafts.Of(outline)));

    [Fact]
    public void A_slight_turn_is_no_corner_unless_marked()
    {
        PieceDraft draft = Drafts.Of("0 0, 40 -5, 80 0, 80 40, 0 40");
        Assert.DoesNotContain("40 -5", Letters(draft), StringComparison.Ordinal);
        Assert.Contains("A 40 0", Letters(draft with { Outline = draft.Outline.SetItem(1, draft.Outline[1] with { Kind = VertexKind.Marked }) }), StringComparison.Ordinal);
    }

    [Fact]
    public void A_curve_has_no_corners_however_sharp()
    {
        PieceDraft draft = Drafts.Of("0 0, 40 0, 40 30, 0 30");
        Assert.Equal("A 0 0, B 40 0, C 0 30", Letters(draft with { Outline = draft.Outline.SetItem(2, draft.Outline[2] with { Kind = VertexKind.Curve }) }));
    }

    [Fact]
    public void A_circle_has_one_edge()
    {
        Piece piece = Circle(100, 10).Made();
        Assert.Equal("A-A", Assert.Single(piece.Edges).Name);
        Assert.Equal(piece.SeamLine.PerimeterMillimeters, piece.Edges[0].SeamLineLength.TotalMillimeters, 0.001);
        // Circumference of the circle itself; the chords of 0.5 degrees are a hundred-thousandth shorter.
        Assert.Equal(2 * Math.PI * 100, piece.Edges[0].SeamLineLength.TotalMillimeters, 0.01);
        Assert.Equal(220, piece.CuttingLine.Bounds.Width / 1000.0, 0.005);
    }

    [Fact]
    public void After_Z_comes_AA()
    {
        string zigzag = string.Join(", ", Enumerable.Range(0, 15).Select(i => $"{40 * i} 0, {40 * i + 20} 30"));
        Piece piece = Drafts.Of(zigzag + ", 600 90, -20 90").Made();
        Assert.Equal("Z AA AB", string.Join(" ", piece.Corners.Skip(25).Take(3).Select(corner => corner.Letter)));
    }

    [Fact]
    public void Edge_lengths_follow_the_polyline()
    {
        Piece piece = Drafts.Of(
        [
            new(Point.FromMillimeters(0, 0), VertexKind.Joint), new(Point.FromMillimeters(100, 0), VertexKind.Joint),
            new(Point.FromMillimeters(103, 40), VertexKind.Curve), new(Point.FromMillimeters(100, 80), VertexKind.Joint), new(Point.FromMillimeters(0, 80), VertexKind.Joint),
        ]).Made();
        Assert.Equal(2 * Math.Sqrt(9 + 1600), piece.Edges[1].SeamLineLength.TotalMillimeters, 0.001);
    }

    [Theory]
    [InlineData("B-A", "There is no edge B-A. The edges, counter-clockwise, are A-B, B-C, C-D, D-A.")]
    [InlineData("A-C", "There is no edge A-C.")]
    [InlineData("A-X", "There is no edge A-X.")]
    public void An_edge_that_does_not_exist_is_refused_with_those_that_do(string name, string expected) =>
        Assert.Contains(expected, Drafts.Of("0 0, 40 0, 40 30, 0 30").WithEdge(name, 5).Refused(), StringComparison.Ordinal);

    [Fact]
    public void Two_allowances_for_one_edge_are_refused() =>
        Assert.Contains("Edge A-B has two allowances", Drafts.Of("0 0, 40 0, 40 30").WithEdge("A-B", 5).WithEdge("A-B", 6).Refused(), StringComparison.Ordinal);

    internal static PieceDraft Circle(double radiusMillimeters, double seamMillimeters) => Drafts.Of(
        Enumerable.Range(0, 720).Select(i => Angle.FromDegrees(i / 2.0)).Select(angle => new OutlineVertex(
            Point.FromMillimeters(radiusMillimeters * angle.CosineRatio, radiusMillimeters * angle.SineRatio), VertexKind.Curve)),
        seamMillimeters);

    private static string Letters(PieceDraft draft) =>
        string.Join(", ", draft.Made().Corners.Select(corner => corner.Letter + " " + Drafts.Text([corner.Place])));
}
