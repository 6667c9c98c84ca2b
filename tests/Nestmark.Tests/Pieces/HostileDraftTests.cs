using CsCheck;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class HostileDraftTests
{
    [Theory]
    [InlineData("0 0, 0 0, 0 0", "encloses nothing")]
    [InlineData("0 0, 10 0, 20 0", "encloses nothing")]
    [InlineData("0 0, 10 10, 10 0, 0 10", "encloses nothing")]
    [InlineData("0 0, 100 0, 100 100, 20 -10, 0 100", "crosses or touches itself")]
    [InlineData("0 0, 100 0, 100 50, 50 0, 0 50", "crosses or touches itself")]
    [InlineData("0 0, 100 0, 200 0, 150 0, 100 50", "crosses or touches itself")]
    [InlineData("0 0, 0.002 0, 0 0.002", "encloses nothing")]
    [InlineData("0 0, 200000 0, 0 10", "more than 100 m")]
    public void An_outline_that_cannot_be_cut_is_refused(string outline, string expected) =>
        Assert.Contains(expected, Drafts.Of(outline, 10).Refused(), StringComparison.Ordinal);

    [Fact]
    public void All_numbers_out_of_range_are_reported_at_once()
    {
        PieceDraft draft = Drafts.Of("0 0, 100 0, 100 100", -1).WithEdge("A-B", 600) with { Cut = new CutQuantity(0, CutKind.Copies), PointLimitRatio = double.NaN };
        string refused = draft.Refused();
        Assert.Equal(4, refused.Split('\n').Length);
        Assert.Contains("Cut: A piece cannot be cut 0 times.", refused, StringComparison.Ordinal);
        Assert.Contains("Edges: The allowance of edge A-B", refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Coordinates_at_the_end_of_the_number_range_are_refused()
    {
        Point far = new(long.MinValue, long.MaxValue);
        PieceDraft draft = Drafts.Of([new(far, VertexKind.Joint), new(-far, VertexKind.Joint), new(Point.Origin, VertexKind.Joint)]);
        Assert.Contains("more than 100 m", draft.Refused(), StringComparison.Ordinal);
        Assert.Contains("more than 100 m", (Drafts.Of("0 0, 9 0, 9 9") with { Grainline = new Segment(far, Point.Origin) }).Refused(), StringComparison.Ordinal);
        Assert.Contains("more than 100 m", (Drafts.Of("0 0, 9 0, 9 9") with { Marks = [new PieceMark("", far)] }).Refused(), StringComparison.Ordinal);
    }

    [Fact]
    public void More_points_than_can_be_made_in_seconds_are_refused() => Assert.Contains("has 20001 points", Drafts.Of(
        Enumerable.Range(0, PieceMaking.MostPoints + 1).Select(i => new OutlineVertex(new Point(i, (long)i * i % 1_000), VertexKind.Joint))).Refused(), StringComparison.Ordinal);

    [Theory]
    [InlineData("0 0, 500 0, 500 0.01, 0 0.01")]
    [InlineData("0 0, 0.05 0, 0.05 0.05, 0 0.05")]
    [InlineData("0 0, 500 0.02, 1000 0, 500 0.04")]
    public void A_thin_or_tiny_piece_still_gets_its_allowance(string outline)
    {
        Piece piece = (Drafts.Of(outline, 10) with { PointLimitRatio = 2.5 }).Made();
        Judge.AssertAround(piece.CuttingLine, piece.SeamLine);
        Assert.True(piece.CuttingLine.Bounds.Height >= 19_998);
    }

    [Fact]
    public void Random_places_end_in_a_sound_piece_or_in_faults() => Drafted.Check(400, draft =>
    {
        PieceResult result = PieceMaking.Make(draft);
        Assert.Equal(result.Piece is null, result.Faults.Any(fault => fault.Weight == FaultWeight.Error));
        if (result.Piece is not null)
            Judge.AssertAround(result.Piece.CuttingLine, result.Piece.SeamLine);
        if (result.Piece?.FoldEdge is not null)
            Assert.Equal(2 * result.Piece.CuttingLine.TwiceArea, Unfolding.Unfold(result.Piece).CuttingLine.TwiceArea);
    });

    [Fact]
    public void Half_stars_on_the_fold_end_in_a_sound_piece_or_in_faults()
    {
        int made = 0;
        Stars.Any.Check(200, draft =>
        {
            PieceResult result = PieceMaking.Make(HalfOf(draft));
            if (result.Piece is null)
                return;
            made++;
            Judge.AssertAround(result.Piece.CuttingLine, result.Piece.SeamLine);
            Assert.Equal(0, result.Piece.CuttingLine.Bounds.MinY);
            Piece whole = Unfolding.Unfold(result.Piece);
            Judge.AssertAround(whole.CuttingLine, whole.SeamLine);
        });
        Assert.True(made > 100, $"Only {made} were made.");
    }

    [Fact]
    public void A_scalloped_edge_with_scallops_smaller_than_its_allowance_is_cleaned_up()
    {
        // Inner curves of radius 6 under an allowance of 10: the offset of each crosses itself.
        IEnumerable<OutlineVertex> scallops = Enumerable.Range(0, 20).SelectMany(scallop => Enumerable.Range(0, 24).Select(i => Angle.FromDegrees(180 - 7.5 * i)).Select(angle =>
            new OutlineVertex(Point.FromMillimeters(12 * scallop + 6 + 6 * angle.CosineRatio, 6 * angle.SineRatio), VertexKind.Curve)));
        Piece piece = Drafts.Of([.. scallops, new(Point.FromMillimeters(240, 0), VertexKind.Joint), new(Point.FromMillimeters(240, 100), VertexKind.Joint), new(Point.FromMillimeters(0, 100), VertexKind.Joint)], 10).Made();
        Judge.AssertAround(piece.CuttingLine, piece.SeamLine);
        NetTopologySuite.Geometries.Geometry rounded = Judge.Rounded(piece.SeamLine, 9.99);
        Assert.InRange(rounded.Difference(Judge.ToNts(piece.CuttingLine)).Area / 1e6, 0, 0.01);
    }

    /// <summary>Random places on a coarse grid, so that many lie on each other or in line; invented.</summary>
    private static Gen<PieceDraft> Drafted => Gen.Select(
        Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12], Gen.Enum<VertexKind>()).Array[0, 7], Gen.Int[0, 40], Gen.Enum<CutKind>(), Gen.Enum<AllowanceEnds>(), Gen.Int[0, 3],
        (places, seam, kind, ends, limit) => Drafts.Of(places.Select(place => new OutlineVertex(Point.FromMillimeters(10 * place.Item1, 10 * place.Item2), place.Item3)), seam) with
        {
            Cut = new CutQuantity(1, kind),
            FoldEdge = kind == CutKind.OnFold ? "B-C" : "",
            Edges = limit == 0 ? [] : [new EdgeAllowance("A", "B", Length.FromMillimeters(seam / 2.0), ends)],
            PointLimitRatio = limit == 0 ? 1 : limit,
        });

    /// <summary>The star's vertices above the middle, on a straight fold edge below them.</summary>
    private static PieceDraft HalfOf(PieceDraft star)
    {
        IEnumerable<OutlineVertex> upper = star.Outline.Where(vertex => vertex.Point.Y > 2_000);
        return star with
        {
            Outline = [new(new Point(-70_000, 0), VertexKind.Marked), new(new Point(90_000, 0), VertexKind.Marked), .. upper],
            Edges = [],
            Seam = star.Edges.Max(edge => edge.Width) / 2,
            Cut = new CutQuantity(1, CutKind.OnFold),
            FoldEdge = "A-B",
        };
    }
}
