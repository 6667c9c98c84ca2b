using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed class GrainTests
{
    private const string Sleeve = "0 0, 200 0, 240 300, 100 380, -40 300";

    [Theory]
    [InlineData("50 0, 50 200", 390, 290)]
    [InlineData("50 200, 50 0", 390, 290)]
    [InlineData("0 50, 200 50", 290, 390)]
    public void The_grainline_is_laid_along_x(string grainline, int lengthMillimeters, int depthMillimeters)
    {
        PieceDraft draft = Drafts.Of("0 0, 280 0, 280 380, 0 380") with { Grainline = Drafts.Line(grainline) };
        Piece piece = draft.WithEdge("A-B", 10).WithEdge("B-C", 10).Made();
        Assert.Equal(new Box(0, 0, 1000 * lengthMillimeters, 1000 * depthMillimeters), piece.CuttingLine.Bounds);
        Assert.Equal(200_000, piece.Grainline.End.X - piece.Grainline.Start.X);
        Assert.Equal(piece.Grainline.Start.Y, piece.Grainline.End.Y);
    }

    [Fact]
    public void The_head_of_an_arrow_drawn_down_lies_toward_x()
    {
        Piece up = (Drafts.Of(Sleeve, 15) with { Grainline = Drafts.Line("100 50, 100 250") }).Made();
        Piece down = (Drafts.Of(Sleeve, 15) with { Grainline = Drafts.Line("100 250, 100 50") }).Made();
        // The wrist, corner A to B, lies left when the head points away from it, right when toward it.
        Assert.Equal(up.SeamLine.Bounds.MinX, up.Corners[0].Place.X);
        Assert.Equal(down.SeamLine.Bounds.MaxX, down.Corners[0].Place.X);
        Assert.Equal(up.CuttingLine.TwiceArea, down.CuttingLine.TwiceArea);
    }

    [Fact]
    public void A_slanted_grainline_is_turned_level()
    {
        Piece straight = (Drafts.Of(Sleeve, 15) with { Grainline = Drafts.Line("0 100, 100 100") }).Made();
        Piece slanted = (Drafts.Of(Sleeve, 15) with { Grainline = Drafts.Line("0 100, 100 100") }).Turned(Turn.By(Angle.FromDegrees(37.25))).Made();
        Assert.InRange(Judge.DifferenceSquareMillimeters(Judge.ToNts(straight.CuttingLine), Judge.ToNts(slanted.CuttingLine)), 0, 3);
    }

    [Fact]
    public void Lines_and_marks_are_carried_along()
    {
        PieceDraft draft = Drafts.Of("0 0, 100 0, 100 80, 0 80", 10) with
        {
            Grainline = Drafts.Line("50 0, 50 80"),
            Marks = [new PieceMark("button", Drafts.Places("20 30")[0])],
            Lines = [new PieceLine("dart", Drafts.Places("0 0, 100 80"))],
        };
        Piece piece = draft.Made();
        // Up becomes right: (x, y) goes to (y, 100 - x), then in by the allowance.
        Assert.Equal("40 90", Drafts.Text([piece.Marks[0].Place]));
        Assert.Equal("10 110, 90 10", Drafts.Text(piece.Lines[0].Points));
    }

    [Fact]
    public void Without_a_grainline_the_arrow_is_drawn_inside_the_piece() => Stars.Any.Check(100, draft =>
    {
        Piece piece = draft.Made();
        NetTopologySuite.Geometries.Polygon seamLine = Judge.ToNts(piece.SeamLine);
        Assert.True(piece.Grainline.End.X - piece.Grainline.Start.X > piece.SeamLine.Bounds.Width / 10);
        Assert.Equal(piece.Grainline.Start.Y, piece.Grainline.End.Y);
        for (int i = 0; i <= 10; i++)
        {
            double x = piece.Grainline.Start.X + (piece.Grainline.End.X - piece.Grainline.Start.X) * i / 10.0;
            Assert.True(Judge.Holds(seamLine, x, piece.Grainline.Start.Y, 0));
        }
    });

    [Fact]
    public void A_grainline_without_length_is_refused() =>
        Assert.Contains("The grainline has no length", (Drafts.Of(Sleeve) with { Grainline = Drafts.Line("5 5, 5 5") }).Refused(), StringComparison.Ordinal);

    [Fact]
    public void Without_an_allowance_the_box_starts_at_the_origin() =>
        Assert.Equal(new Box(0, 0, 280_000, 380_000), Drafts.Of(Sleeve).Made().CuttingLine.Bounds);
}
