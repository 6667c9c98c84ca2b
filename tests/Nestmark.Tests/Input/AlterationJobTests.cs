using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>The keys alter, grade and a piece's sizes, from the job file to its pieces.</summary>
public sealed class AlterationJobTests
{
    [Fact]
    public void Every_alteration_of_the_samples_is_made_and_said()
    {
        Job job = ReadFixture("shirt");
        string[] verbs = [.. job.Pieces.SelectMany(piece => piece.Changes).Select(change => change.What.Split(' ')[0]).Distinct().Order()];
        Assert.Equal(["Closed", "Completed", "Cut", "Extended", "Lengthened", "Moved", "Narrowed", "Raised", "Shortened", "Split", "Spread", "Widened"], verbs);
        Assert.Equal(["front", "sleeve", "bodice", "skirt", "panel", "lower back", "yoke", "collar", "pocket"], job.Pieces.Select(piece => piece.Piece.Name));
        Assert.All(job.Pieces, piece => Assert.NotNull(piece.Before));
    }

    [Fact]
    public void Before_lies_on_the_piece_where_nothing_moved()
    {
        foreach (JobPiece piece in ReadFixture("shirt").Pieces.Where(piece => piece.Piece.Name is "front" or "sleeve" or "skirt" or "pocket"))
        {
            Assert.Contains(piece.Piece.Corners, corner => piece.Before!.Corners.Any(
                old => old.Letter == corner.Letter && (old.Place + piece.BeforeShift).DistanceTo(corner.Place).Micrometers <= 2));
        }
    }

    [Fact]
    public void Joined_graded_and_blended_pieces_have_their_sizes()
    {
        Job job = ReadFixture("joined");
        Assert.Equal(["back ", "skirt S", "skirt L", "top ", "basque ", "belt L"], job.Pieces.Select(piece => piece.Piece.Name + " " + piece.Piece.Size));
        // 50 and 14 cm on one fold.
        Piece back = job.Pieces[0].Piece;
        Assert.Equal(640, back.Edges.Single(edge => edge.Kind == EdgeKind.Fold).SeamLineLength.TotalMillimeters, 0.01);
        // Across the hem: base 28 cm; S 1 less; L takes XL's 2 more, while its own step would have been 1.
        Assert.Equal([270, 300], job.Pieces.Skip(1).Take(2).Select(piece => Math.Round(piece.Piece.SeamLine.Bounds.Height / 1000.0)));
    }

    [Fact]
    public void A_fold_piece_says_that_the_whole_gains_twice()
    {
        JobReading reading = Jobs.Read(Jobs.Head + "pieces: { front: { rectangle: 60 x 20, cut: 1 on fold } }\ncloths: { c: { width: 140 } }\nalter: [{ widen: front, by: 2, at: fold }]\n");
        Job job = Jobs.Good(reading);
        Assert.Equal("front: 2 cm on the half piece: the whole gains 4 cm.", Assert.Single(reading.Problems).What);
        PieceChange change = Assert.Single(job.Pieces[0].Changes);
        Assert.Equal("Widened 2 cm at the fold, 4 cm in all.", change.What);
        Assert.Equal(60 * 2 * 100, change.AreaAfterSquareMillimeters - change.AreaBeforeSquareMillimeters, 0.1);
        Assert.Equal(["B-C 200 mm 220 mm", "D-A 200 mm 220 mm"], change.Edges.Select(edge => $"{edge.Name} {edge.Before} {edge.After}"));
    }

    [Theory]
    [InlineData("raise", 380, 620)]
    [InlineData("lower", 420, 580)]
    public void A_seam_lowered_lengthens_the_piece_above_and_shortens_the_one_below_and_raised_the_other_way_round(string verb, double above, double below)
    {
        // The grain points from the hem up: the bodice's lower edge is D-A at x = 0, the skirt's upper edge is B-C.
        Job job = Jobs.Good(Jobs.Head + "pieces: { bodice: { rectangle: 40 x 20, cut: 1 pair }, skirt: { rectangle: 60 x 20, cut: 1 pair } }\ncloths: { c: { width: 140 } }\nalter: [{ " + verb + ": waist, by: 2, above: { bodice: D-A }, below: { skirt: B-C } }]\n");
        Assert.Equal([above, below], job.Pieces.Select(piece => piece.Piece.SeamLine.Bounds.Width / 1000.0));
    }

    [Fact]
    public void An_edge_that_exists_only_after_the_cut_can_have_its_allowance()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { sleeve: { rectangle: 60 x 20, cut: 1 pair, edges: { E-F: 4, D-A: 2 } } }\ncloths: { c: { width: 140 } }\nalter: [{ cut off: sleeve, at: 20 from A, keep: B }]\n");
        Assert.Equal(40, job.Pieces[0].Piece.Edges.Single(edge => edge.Name == "E-F").Allowance.TotalMillimeters);
    }

    [Fact]
    public void An_alteration_for_some_sizes_leaves_the_others()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { tie: { rectangle: 60 x 20, cut: 2, sizes: [S, M] } }\ncloths: { c: { width: 140 } }\nsizes: { S: 1, M: 1 }\nalter: [{ lengthen: tie, by: 5, at: 20 from A, sizes: M }]\n");
        Assert.Equal([600, 650], job.Pieces.Select(piece => piece.Piece.SeamLine.Bounds.Width / 1000.0));
        Assert.Null(job.Pieces[0].Before);
    }

    private static Job ReadFixture(string name) => Jobs.Good(JobReader.Read(Fixtures.PathOf($"alterations/{name}.yaml"), new DiskFiles()));
}
