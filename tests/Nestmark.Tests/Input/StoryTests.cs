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
        Assert.InRange(front.Piece.CuttingLine.Bounds.Height - front.Before!.CuttingLine.Bounds.Height, 19_950, 20_050);
        Assert.Equal("front: 2 cm on the half piece: the whole gains 4 cm.", Assert.Single(Reading.Problems).What);
    }

    [Fact]
    public void Sleeves_are_six_centimeters_shorter_in_every_size() =>
        Assert.All(Reading.Job!.Pieces.Where(piece => piece.Piece.Name == "sleeve"), sleeve => Assert.InRange(sleeve.Before!.CuttingLine.Bounds.Width - sleeve.Piece.CuttingLine.Bounds.Width, 59_950, 60_050));

    [Fact]
    public void All_seams_still_meet() => Assert.Empty(SeamNotes.Of(Reading.Job!));
}
