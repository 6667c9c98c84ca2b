using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;

namespace Nestmark.Tests.Nesting;

public sealed class LayRulesNotesTests
{
    private const string Lopsided = "0 0, 300 0, 280 200, 0 150";
    private const string SameTopAndBottom = "0 0, 300 0, 250 75, 300 150, 0 150";
    private const string SameLeftAndRight = "0 0, 300 0, 250 150, 50 150";

    [Fact]
    public void Copies_that_are_not_their_own_mirror_image_get_a_note_on_folded_cloth()
    {
        LayNote note = NotesFor(TestCloths.Folded, [Order(Lopsided, "2")]).Single();
        Assert.Contains("half of them come out as mirror images", note.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SameTopAndBottom, Nap.OneWay)]
    [InlineData(SameTopAndBottom, Nap.None)]
    [InlineData(SameLeftAndRight, Nap.None)]
    public void A_piece_that_is_its_own_mirror_image_gets_none(string shape, Nap nap) =>
        Assert.Empty(NotesFor(TestCloths.Folded with { Nap = nap }, [Order(shape, "2")]));

    // Left and right alike means alike after half a turn of its mirror image, which one-way cloth forbids.
    [Fact]
    public void One_way_cloth_does_not_let_a_left_right_symmetry_count() =>
        Assert.Single(NotesFor(TestCloths.Folded with { Nap = Nap.OneWay }, [Order(SameLeftAndRight, "2")]));

    [Theory]
    [InlineData("2", "piece is cut 2 from open cloth, and both copies lie as drawn. Write 1 pair for left and right ones.")]
    [InlineData("4", "piece is cut 4 from open cloth, and all copies lie as drawn. Write 2 pairs for left and right ones.")]
    public void Copies_that_are_not_their_own_mirror_image_get_a_note_on_open_cloth(string cut, string expected)
    {
        LayNote note = NotesFor(TestCloths.Open, [Order(Lopsided, cut)]).Single();
        Assert.Equal(expected, note.What + " " + note.Hint);
    }

    [Theory]
    [InlineData(SameTopAndBottom, "2")]
    [InlineData(Lopsided, "1")]
    [InlineData(Lopsided, "3")]
    public void Single_copies_and_those_that_are_their_own_mirror_image_get_none_on_open_cloth(string shape, string cut) =>
        Assert.Empty(NotesFor(TestCloths.Open, [Order(shape, cut)]));

    [Theory]
    [InlineData(Nap.None, 0)]
    [InlineData(Nap.BySize, 1)]
    [InlineData(Nap.OneWay, 1)]
    public void A_pair_from_one_ply_of_napped_cloth_says_how_to_turn_it_over(Nap nap, int notes) =>
        Assert.Equal(notes, NotesFor(TestCloths.Open with { Nap = nap }, [Order(Lopsided, "1 pair"), Order(Lopsided, "1 pair")]).Length);

    private static ImmutableArray<LayNote> NotesFor(Cloth cloth, params PieceOrder[] orders) =>
        LayNotes.For(cloth, LayRules.TaskFor(cloth, orders).Demands);

    private static PieceOrder Order(string shape, string cut) => new(TestPieces.Of("piece", shape, cut), "", 1);
}
