using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class PiecingTests
{
    // By hand: 40 x 10 cm and 1 cm on both joined edges: two parts of 21 x 10 cm.
    [Fact]
    public void Both_joined_edges_get_the_allowance()
    {
        ImmutableArray<Piece> parts = Piecing.InTwo(TestPieces.Rectangle("facing", 400, 100, "1"), Length.FromMillimeters(10));
        Assert.Equal([(210_000L, 100_000L), (210_000L, 100_000L)], parts.Select(part => (part.CuttingLine.Bounds.Width, part.CuttingLine.Bounds.Height)));
        Assert.Equal(["facing part 1", "facing part 2"], parts.Select(part => part.Name));
    }

    [Fact]
    public void Without_the_allowances_the_seam_lines_make_the_whole_again()
    {
        Piece whole = TestPieces.Of("facing", "0 0, 400 0, 380 120, 200 150, 20 120", "1");
        ImmutableArray<Piece> parts = Piecing.InTwo(whole, Length.FromMillimeters(15));
        NetTopologySuite.Geometries.Geometry joined = Shapes.ToNts(parts[0].SeamLine).Union(Shapes.ToNts(parts[1].SeamLine));
        Assert.Equal(0, joined.SymmetricDifference(Shapes.ToNts(whole.SeamLine)).Area, 1e6);
    }

    [Fact]
    public void An_allowance_as_long_as_the_half_gives_nothing() =>
        Assert.Empty(Piecing.InTwo(TestPieces.Rectangle("tab", 20, 30, "1"), Length.FromMillimeters(10)));

    // By hand: a half of 20 x 10 cm with its fold edge below, 1 cm on both joined edges: two halves of 11 x 10 cm, both on the fold.
    [Fact]
    public void A_half_piece_is_divided_across_its_fold_and_both_parts_lie_on_it()
    {
        ImmutableArray<Piece> parts = Piecing.InTwo(TestPieces.Rectangle("front", 200, 100, "1 on fold"), Length.FromMillimeters(10));
        Assert.Equal([(0L, 110_000L), (90_000L, 200_000L)], parts.Select(part => (part.FoldEdge!.Start.X, part.FoldEdge!.End.X)));
        Assert.All(parts, part => Assert.Equal(CutKind.OnFold, part.Cut.Kind));
    }

    [Fact]
    public void A_half_piece_whose_fold_ends_before_the_middle_is_left_whole() =>
        Assert.Empty(Piecing.InTwo(TestPieces.Of("front", "0 0, 80 0, 200 60, 200 100, 0 100", "1 on fold"), Length.Zero));
}
