using CsCheck;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class NotchTests
{
    [Fact]
    public void A_notch_is_carried_square_to_the_cutting_line()
    {
        Piece piece = Drafts.Of("0 0, 100 0, 100 80, 0 80", 15).WithNotch("waist", "102 30").Made();
        Assert.Equal(new Notch("waist", Drafts.Places("115 45")[0], Drafts.Places("130 45")[0]), Assert.Single(piece.Notches));
    }

    [Fact]
    public void A_notch_more_than_3_mm_off_the_outline_is_refused() =>
        Assert.Contains("Notch waist lies more than 3 mm", Drafts.Of("0 0, 100 0, 100 80, 0 80", 15).WithNotch("waist", "103.1 30").Refused(), StringComparison.Ordinal);

    [Fact]
    public void A_notch_on_the_fold_stays_there()
    {
        Piece piece = Drafts.Of("0 0, 100 0, 100 80, 0 80", 15).OnFold("A-B").WithNotch("middle", "40 0").Made();
        Assert.Equal(new Notch("middle", Drafts.Places("55 0")[0], Drafts.Places("55 0")[0]), Assert.Single(piece.Notches));
    }

    [Fact]
    public void On_a_drawn_cutting_line_nothing_is_added_and_the_notch_lies_on_it()
    {
        Piece piece = (Drafts.Of("0 0, 100 0, 100 80, 0 80", 15).WithNotch("", "100 30") with { Meaning = OutlineMeaning.CuttingLine }).Made();
        Assert.Equal(Drafts.Text(piece.SeamLine.Outer), Drafts.Text(piece.CuttingLine.Outer));
        Assert.Equal("100 30", Drafts.Text([piece.Notches[0].OnCuttingLine]));
    }

    [Fact]
    public void Notches_end_on_the_cutting_line() => Gen.Select(Stars.Any, Gen.Double[0, 1].Array[5]).Check(100, sample =>
    {
        (PieceDraft draft, double[] shares) = sample;
        int count = draft.Outline.Length;
        PieceMark[] notches = [.. shares.Select((share, i) => new PieceMark("", Between(draft.Outline[i % count].Point, draft.Outline[(i + 1) % count].Point, share)))];
        Piece piece = (draft with { Notches = [.. notches] }).Made();
        foreach (Notch notch in piece.Notches)
            Assert.InRange(Judge.DistanceToOutline(piece.CuttingLine, notch.OnCuttingLine.X, notch.OnCuttingLine.Y), 0, 3);
    });

    private static Point Between(Point start, Point end, double share) =>
        new(start.X + (long)(share * (end.X - start.X)), start.Y + (long)(share * (end.Y - start.Y)));
}
