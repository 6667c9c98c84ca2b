using System.Collections.Immutable;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using static Nestmark.Tests.Pieces.Alterations.Altered;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>Cutting off, splitting, joining and completing. Areas by NetTopologySuite.</summary>
public sealed class PartTests
{
    private static readonly PieceDraft Sleeve = Drafts.Of("0 0, 400 40, 400 260, 0 300").WithEdge("D-A", 30).WithEdge("B-C", 12) with { Grainline = Drafts.Line("50 150, 350 150") };

    private static readonly PieceDraft Half = Drafts.Of("0 0, 600 0, 600 180, 0 250").OnFold("A-B");

    [Fact]
    public void A_long_sleeve_cut_short_keeps_its_letters_and_gets_new_ones_at_the_cut()
    {
        PieceDraft brief = Good(CuttingOff.Apply(Sleeve, new LevelLine("A", "", Mm(300)), "B"));
        Assert.Equal("B 400 40, C 400 260, E 300 270, F 300 30", brief.Corners());
        Assert.Equal((220 + 240) / 2 * 100, Area(brief), 0.01);
        // The edge that stays keeps its allowance; the cut edge has the piece's.
        Piece piece = (brief with { Seam = Mm(10) }).Made();
        Assert.Equal(12, piece.Edges.Single(edge => edge.Name == "B-C").Allowance.TotalMillimeters);
        Assert.Equal(10, piece.Edges.Single(edge => edge.Name == "E-F").Allowance.TotalMillimeters);
        // Without a corner the larger part is kept, which here is the hem's.
        Assert.Contains("D 0 300", Good(CuttingOff.Apply(Sleeve, new LevelLine("A", "", Mm(300)), "")).Corners(), StringComparison.Ordinal);
    }

    [Fact]
    public void Split_parts_make_up_the_whole_and_have_an_allowance_on_both_sides()
    {
        ImmutableArray<AlterationResult> parts = Splitting.Apply(Sleeve, new LevelLine("A", "", Mm(300)), "B", "A", Mm(7));
        PieceDraft cap = Good(parts[0]);
        PieceDraft arm = Good(parts[1]);
        Assert.Equal(Area(Sleeve), Area(cap) + Area(arm), 0.01);
        Assert.Equal(7, cap.Made().Edges.Single(edge => edge.Name == "E-F").Allowance.TotalMillimeters);
        Assert.Equal(7, arm.Made().Edges.Single(edge => edge.Name == "F-E").Allowance.TotalMillimeters);
        SameOutline(Sleeve, Good(Joining.Apply(arm, "F-E", cap, "E-F")), 0.1);
    }

    [Fact]
    public void A_part_off_the_fold_is_cut_in_pairs()
    {
        ImmutableArray<AlterationResult> parts = Splitting.Apply(Half, new LineBetween(AlterPlace.OnEdge("D-A", Mm(100)), AlterPlace.OnEdge("B-C", Mm(100))), "A", "D", Mm(10));
        Assert.Equal(CutKind.OnFold, Good(parts[0]).Cut.Kind);
        Assert.Equal(CutKind.Pairs, Good(parts[1]).Cut.Kind);
        Assert.Contains("1 pair", Assert.Single(parts[1].Notes), StringComparison.Ordinal);
        ImmutableArray<AlterationResult> same = Splitting.Apply(Half, new LevelLine("A", "", Mm(590)), "A", "D", Mm(10));
        Assert.StartsWith("The corners A and D lie in the same part", Refused(same[0]).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_on_the_fold_joined_have_one_fold()
    {
        PieceDraft yoke = Drafts.Of("0 0, 140 0, 100 160, 0 180").OnFold("A-B");
        PieceDraft whole = Good(Joining.Apply(Half, "B-C", yoke, "D-A"));
        Assert.Equal(Area(Half) + Area(yoke), Area(whole), 0.01);
        Piece piece = whole.Made();
        Assert.Equal(740, piece.FoldEdge!.End.XMillimeters - piece.FoldEdge.Start.XMillimeters);
        Assert.Equal("A, E, F, C, D", string.Join(", ", piece.Corners.Select(corner => corner.Letter)));
    }

    [Fact]
    public void A_piece_is_turned_until_its_edge_lies_on_the_other()
    {
        // The tab stands on its edge A-B, 100 long; turned by a quarter onto B-C, its 50 and 60 lie beyond x = 200.
        PieceDraft body = Drafts.Of("0 0, 200 0, 200 100, 0 100");
        PieceDraft tab = Drafts.Of("0 0, 100 0, 100 50, 0 60");
        PieceDraft whole = Good(Joining.Apply(body, "B-C", tab, "A-B"));
        Assert.Equal(Area(body) + Area(tab), Area(whole), 0.01);
        Assert.Contains("E 250 0, F 260 100", whole.Corners(), StringComparison.Ordinal);
    }

    [Fact]
    public void Edges_that_do_not_lie_on_each_other_are_not_joined()
    {
        AlterationFault fault = Refused(Joining.Apply(Half, "B-C", Drafts.Of("0 0, 140 0, 140 160, 0 170").OnFold("A-B"), "D-A"));
        Assert.StartsWith("The edges B-C and D-A do not lie on each other: they are 5 mm apart", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_half_completed_is_what_opens_from_the_fold()
    {
        PieceDraft marked = Half.WithNotch("side", "300 215") with { Marks = [new PieceMark("tie", Drafts.Places("100 50")[0])] };
        PieceDraft whole = Good(HalfCompleting.Apply(marked));
        Piece opened = Unfolding.Unfold(Half.Made());
        Piece made = whole.Made();
        Assert.Equal(new CutQuantity(1, CutKind.Copies), whole.Cut);
        Assert.Equal(opened.SeamLine.AreaSquareMillimeters, made.SeamLine.AreaSquareMillimeters, 0.01);
        Assert.Equal((2, 2), (made.Notches.Length, made.Marks.Length));
        // Corners A and B on the fold are passed straight; the mirror images of C and D have the next free letters.
        Assert.Equal("C 600 180, D 0 250, E 0 -250, F 600 -180", whole.Corners());
    }

    [Fact]
    public void A_line_through_two_arms_cannot_cut_off()
    {
        PieceDraft fork = Drafts.Of("0 0, 300 0, 300 50, 100 50, 100 150, 300 150, 300 200, 0 200");
        Assert.StartsWith("The line crosses the outline 4 times", Refused(CuttingOff.Apply(fork, new LevelLine("A", "", Mm(200)), "A")).What, StringComparison.Ordinal);
    }
}
