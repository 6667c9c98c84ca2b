using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using static Nestmark.Tests.Pieces.Alterations.Altered;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>Slash and spread, slash and close. Plain geometry; the gather ratios of references/trade.md 8 set the amounts.</summary>
public sealed class SlashTests
{
    private static readonly PieceDraft Panel = Drafts.Of("0 0, 600 0, 600 200, 0 200") with { Grainline = Drafts.Line("50 20, 550 20") };

    private static readonly Slash Middle = new(AlterPlace.AtShare("D-A", 0.5), AlterPlace.AtShare("B-C", 0.5));

    [Fact]
    public void Opened_in_parallel_both_ends_gain_the_amount_and_nothing_else_changes()
    {
        // 20 in at a ratio of 1 : 1 to 30 in at 1.5 : 1 [INST]; here 200 mm to 300 mm.
        PieceDraft full = Good(SlashSpreading.Apply(Panel, [Middle], Mm(100), SlashOpening.Parallel, SideTruing.Smooth));
        Assert.Equal("A 0 0, B 600 0, C 600 300, D 0 300", full.Corners());
        Assert.Equal(600 * 300, Area(full), 0.01);
    }

    [Fact]
    public void Opened_about_its_end_the_seam_there_keeps_its_length_and_the_other_gains_the_amount()
    {
        PieceDraft flared = Good(SlashSpreading.Apply(Panel, [Middle], Mm(60), SlashOpening.Pivot, SideTruing.AsCut));
        Assert.Equal(200, Edge(flared, "B-C"), 0.002);
        Assert.Equal(260, Edge(flared, "D-A"), 0.002);
        Assert.Equal(600, Edge(flared, "C-D"), 0.002);
        // Two halves and an isosceles wedge: two sides of 600, base 60.
        Assert.Equal(600 * 200 + 0.5 * 60 * Math.Sqrt(600 * 600 - 30 * 30), Area(flared), 0.5);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Many_slashes_open_the_same_part_each_and_as_much_together(int count)
    {
        PieceDraft flared = Good(SlashSpreading.Apply(Panel, Slash.Evenly("D-A", "B-C", count), Mm(60), SlashOpening.Pivot, SideTruing.AsCut));
        Assert.Equal(260, Edge(flared, "D-A"), 0.01);
        Assert.Equal(200, Edge(flared, "B-C"), 0.01);
        Assert.Equal(600 * 200 + count * 0.5 * (60.0 / count) * Math.Sqrt(600 * 600 - 900.0 / (count * count)), Area(flared), 0.5);
    }

    [Fact]
    public void The_opened_edge_is_drawn_anew_as_one_smooth_line()
    {
        PieceDraft flared = Good(SlashSpreading.Apply(Panel, Slash.Evenly("D-A", "B-C", 3), Mm(60), SlashOpening.Pivot, SideTruing.Smooth));
        Assert.InRange(Edge(flared, "D-A"), 255, 262);
        Assert.DoesNotContain(TurnsOf(flared, "D-A"), turn => turn > 12);
    }

    [Theory]
    [InlineData(SlashOpening.Pivot)]
    [InlineData(SlashOpening.Parallel)]
    public void Closed_by_as_much_as_it_was_opened_it_is_as_it_was(SlashOpening opening)
    {
        PieceDraft open = Good(SlashSpreading.Apply(Panel, [Middle], Mm(40), opening, SideTruing.AsCut));
        // The still part ends 100 mm from A on one edge and from B on the other.
        Slash again = new(AlterPlace.OnEdge("A-D", Mm(100)), AlterPlace.OnEdge("B-C", Mm(100)));
        PieceDraft closed = Good(SlashClosing.Apply(open, [again], Mm(40), opening, SideTruing.AsCut));
        SameOutline(Panel, closed, 30);
        Assert.Equal(Area(Panel), Area(closed), 15);
    }

    [Fact]
    public void Closing_takes_its_wedge_out()
    {
        PieceDraft narrow = Good(SlashClosing.Apply(Panel, [Middle], Mm(60), SlashOpening.Parallel, SideTruing.AsCut));
        Assert.Equal(600 * 140, Area(narrow), 0.01);
        PieceDraft tapered = Good(SlashClosing.Apply(Panel, [Middle], Mm(60), SlashOpening.Pivot, SideTruing.AsCut));
        Assert.Equal(200, Edge(tapered, "B-C"), 0.01);
        Assert.InRange(Edge(tapered, "D-A"), 138, 143.5);
    }

    [Fact]
    public void The_fold_and_the_grain_stay_and_what_is_drawn_beyond_goes_along()
    {
        PieceDraft half = Panel.OnFold("A-B") with { Grainline = null, Marks = [new PieceMark("dart", Drafts.Places("300 180")[0]), new PieceMark("tie", Drafts.Places("300 20")[0])] };
        PieceDraft open = Good(SlashSpreading.Apply(half, [Middle], Mm(50), SlashOpening.Parallel, SideTruing.Smooth));
        Assert.Equal(["300 230", "300 20"], open.Marks.Select(mark => $"{mark.Place.XMillimeters} {mark.Place.YMillimeters}"));
        Assert.Equal("A-B", open.FoldEdge);
        AlterationFault fault = Refused(SlashSpreading.Apply(half, [new Slash(AlterPlace.AtShare("C-D", 0.5), AlterPlace.AtShare("A-B", 0.5))], Mm(50), SlashOpening.Pivot, SideTruing.Smooth));
        Assert.StartsWith("The slash would open the fold edge", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Closing_past_the_end_of_the_piece_is_refused_with_the_most_that_works()
    {
        AlterationFault fault = Refused(SlashClosing.Apply(Panel, [Middle], Mm(150), SlashOpening.Parallel, SideTruing.AsCut));
        Assert.Equal(100, fault.Largest!.Value.TotalMillimeters, 0.2);
    }

    private static IEnumerable<double> TurnsOf(PieceDraft draft, string name)
    {
        Polygon shape = Shape(draft);
        Piece piece = draft.Made();
        Assert.Contains(piece.Edges, edge => edge.Name == name);
        int start = draft.Outline.ToList().FindIndex(vertex => vertex.Point == draft.Corners.Single(corner => corner.Letter == name[..1]).Place);
        int end = draft.Outline.ToList().FindIndex(vertex => vertex.Point == draft.Corners.Single(corner => corner.Letter == name[^1..]).Place);
        for (int i = start + 1; i % draft.Outline.Length != end; i++)
        {
            Point before = draft.Outline[(i - 1) % draft.Outline.Length].Point;
            Point here = draft.Outline[i % draft.Outline.Length].Point;
            Point after = draft.Outline[(i + 1) % draft.Outline.Length].Point;
            Angle turn = Angle.OfDirection((after - here).X, (after - here).Y) - Angle.OfDirection((here - before).X, (here - before).Y);
            yield return Math.Abs(turn.SignedDegrees);
        }
        Assert.True(shape.AreaSquareMillimeters > 0);
    }
}
