using Nestmark.Input;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Tests.Input;

/// <summary>One change of a garment from the pattern in DXF to its seams, as README tells it.</summary>
public sealed class StoryTests
{
    private static readonly JobReading Reading = JobReader.Read(Fixtures.PathOf("dxf-story/altered.yaml"), new DiskFiles());

    // A half moved 2 cm off the fold gains 4 cm in all (references/trade.md 8, shift from a fold).
    [Fact]
    public void The_front_gains_twice_the_amount_at_the_fold_and_the_plan_says_so()
    {
        JobPiece front = Reading.Job!.Pieces.Single(piece => piece.Piece.Title == "front M");
        Assert.InRange(front.Piece.SeamLine.Bounds.Height - front.Before!.SeamLine.Bounds.Height, 19_950, 20_050);
        Assert.Equal(
            ["front: 2 cm on the half piece: the whole gains 4 cm.", "front skirt: 2 cm on the half piece: the whole gains 4 cm."],
            Reading.Problems.Select(problem => problem.What));
    }

    [Fact]
    public void Sleeves_are_six_centimeters_shorter_in_every_size() =>
        Assert.All(Reading.Job!.Pieces.Where(piece => piece.Piece.Name == "sleeve"), sleeve => Assert.InRange(sleeve.Before!.CuttingLine.Bounds.Width - sleeve.Piece.CuttingLine.Bounds.Width, 59_950, 60_050));

    // references/trade.md 8: a raised waist seam changes bodice and skirt by opposite amounts (common practice).
    [Theory]
    [InlineData("front", -30)]
    [InlineData("back", -30)]
    [InlineData("front skirt", 30)]
    [InlineData("back skirt", 30)]
    public void The_waist_is_three_centimeters_higher_on_every_piece_that_shares_it(string name, double millimeters) =>
        Assert.All(Reading.Job!.Pieces.Where(piece => piece.Piece.Name == name), piece =>
            Assert.Equal(millimeters, piece.Piece.SeamLine.Bounds.Width / 1000.0 - piece.Before!.SeamLine.Bounds.Width / 1000.0, 0.05));

    // Kept as narrow as it was: a quarter of 22.2 cm of size M, 2 cm wider in front; the side seam narrows above it.
    [Fact]
    public void The_waist_seam_stays_as_narrow_as_its_old_line()
    {
        double[] waists = [.. new[] { "front", "back", "front skirt", "back skirt" }.Select(name => WaistOf(Reading.Job!.Pieces.Single(piece => piece.Piece.Title == name + " M").Piece))];
        Assert.Equal([242.0, 222.0, 242.0, 222.0], waists.Select(waist => Math.Round(waist, 1)));
    }

    private static double WaistOf(Nestmark.Pieces.Piece piece) =>
        piece.Edges.Single(edge => edge.Name == (piece.Name.EndsWith("skirt", StringComparison.Ordinal) ? "B-C" : "F-A")).SeamLineLength.TotalMillimeters;

    [Fact]
    public void All_seams_still_meet()
    {
        Assert.Empty(SeamNotes.Of(Reading.Job!));
        Assert.Equal(21, SeamReports.Of(Reading.Job!).Length);
        Assert.All(Reading.Job!.Seams, seam => Assert.Empty(seam.Turns));
    }
}
