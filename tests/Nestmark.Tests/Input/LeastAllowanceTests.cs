using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>The key least: which allowances may be narrower where cloth is short.</summary>
public sealed class LeastAllowanceTests
{
    [Fact]
    public void Least_allowances_are_read_with_their_edges()
    {
        JobPiece piece = Jobs.Good(Whole("edges: { A-B: 4 }, least: { seam: 1, A-B: 2 }")).Pieces[0];
        Assert.Equal([new LeastAllowance("", Length.FromMillimeters(10)), new LeastAllowance("A-B", Length.FromMillimeters(20))], piece.Draft!.Least.AsEnumerable());
        Assert.Equal(Length.FromMillimeters(40), piece.Piece.Edges[0].Allowance);
    }

    [Theory]
    [InlineData("least: { A-C: 1 }", "a: There is no edge A-C.", "The edges, counter-clockwise, are A-B, B-C, C-D, D-A.")]
    [InlineData("least: { A-B: 2 }", "a: The allowance of A-B is 1.5 cm, and its least is said to be 2 cm.", "Write what it may shrink to")]
    [InlineData("least: { seam: 2 }", "a: The seam allowance is 1.5 cm, and its least is said to be 2 cm.", "Write what it may shrink to")]
    [InlineData("line: cut, least: { seam: 1 }", "a: The outline is the cutting line, so no allowance of it is known", "Draw the seam line")]
    public void What_cannot_become_narrower_is_refused_with_the_remedy(string keys, string what, string hint)
    {
        Problem problem = Jobs.OnlyProblem(Jobs.Read(Whole(keys)));
        Assert.Equal("pieces.a.least", problem.Where.Item);
        Assert.StartsWith(what, problem.What, StringComparison.Ordinal);
        Assert.StartsWith(hint, problem.Hint, StringComparison.Ordinal);
    }

    // By hand: 20 x 9 cm with 1.5 cm round it is 23 x 12 cm; with 4 cm, at least 2 cm, below and 1 cm elsewhere 22 x (9 + 2 + 1) cm.
    [Fact]
    public void A_piece_is_made_again_with_its_least_allowances_and_keeps_what_was_drawn_on_it()
    {
        JobPiece piece = Jobs.Good(Whole("edges: { A-B: 4 }, least: { seam: 1, A-B: 2 }")).Pieces[0];
        Point notch = piece.Piece.Corners[0].Place + Point.FromMillimeters(50, 0);
        Piece marked = piece.Piece with { Notches = [new Notch("middle", notch, notch + Point.FromMillimeters(0, -40))] };
        Piece narrow = AllowanceNarrowing.Of(piece.Draft!, marked, piece.Draft!.Least)!;
        Assert.Equal((220_000, 120_000), (narrow.CuttingLine.Bounds.Width, narrow.CuttingLine.Bounds.Height));
        Assert.Equal(piece.Piece.SeamLine.AreaSquareMillimeters, narrow.SeamLine.AreaSquareMillimeters);
        Assert.Equal((new Point(60_000, 20_000), new Point(60_000, 0)), (narrow.Notches[0].OnSeamLine, narrow.Notches[0].OnCuttingLine));
    }

    private static string Whole(string keys) => Jobs.Head + $"pieces: {{ a: {{ rectangle: 20 x 9, cut: 2, {keys} }} }}\ncloths: {{ shell: {{ width: 140 }} }}\n";
}
