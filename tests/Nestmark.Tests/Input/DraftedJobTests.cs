using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Tests.Input;

/// <summary>Pieces drafted from measures, from the job file on.</summary>
public sealed class DraftedJobTests
{
    [Fact]
    public void A_skirt_its_band_and_its_ruffle_go_together_whatever_their_order()
    {
        JobReading reading = JobReader.Read(Fixtures.PathOf("drafted/circle-skirt.yaml"), new DiskFiles());
        Job job = Jobs.Good(reading);
        Assert.Equal(["ruffle", "band", "skirt"], job.Pieces.Select(piece => piece.Piece.Name));
        Assert.Equal(SeamVerdict.Meets, Assert.Single(SeamReports.Of(job)).Walk.Verdict);
        // Three quarters of a circle: r 14.854 cm; hem 2π 0.75 (14.854 + 55) = 329.2 cm, gathered 1.5 : 1 from 493.8 cm, four strips of cloth 150 - 2 - 2 cm.
        Assert.Contains(reading.Problems, note => note.Severity == Severity.Note && note.What.StartsWith("skirt: 3 panels of 90 degrees", StringComparison.Ordinal) && note.What.Contains("waist radius 14.9 cm", StringComparison.Ordinal));
        Piece ruffle = job.Pieces[0].Piece;
        Assert.Equal(new CutQuantity(4, CutKind.Copies), ruffle.Cut);
        Assert.Equal(1.5 * 2 * Math.PI * 0.75 * (70 / (1.5 * Math.PI) + 55) / 4, ruffle.SeamLine.Bounds.Height / 10_000.0, 0.05);
        Piece band = job.Pieces[1].Piece;
        Assert.Equal(73, band.SeamLine.Bounds.Width / 10_000.0, 1);
        Assert.Equal(6, band.SeamLine.Bounds.Height / 10_000.0, 3);
        Assert.Equal(3, band.Notches.Length);
    }

    [Fact]
    public void Small_pieces_are_drafted_from_the_front_and_from_measures()
    {
        Job job = Jobs.Good(JobReader.Read(Fixtures.PathOf("drafted/small-pieces.yaml"), new DiskFiles()));
        Dictionary<string, Piece> pieces = job.Pieces.ToDictionary(piece => piece.Piece.Name, piece => piece.Piece);
        Assert.Equal(["front", "neck facing", "tie", "pocket", "binding", "binding square"], pieces.Keys);
        Assert.Equal("1 on fold, 1 on fold, 1 pair, 2 pairs", string.Join(", ", pieces.Values.Take(4).Select(piece => piece.Cut)));
        Assert.True(int.IsEvenInteger(pieces["binding"].Cut.Count));
        Assert.Empty(Planner.Check(job).Where(problem => problem.Severity == Severity.Error));
    }

    [Fact]
    public void Pieces_measured_along_each_other_in_a_circle_are_named()
    {
        JobReading reading = JobReader.Read(Fixtures.PathOf("trouble/draft-in-a-circle.yaml"), new DiskFiles());
        Assert.Contains(reading.Problems, problem => problem.What == "These pieces are measured along each other in a circle: one, two.");
    }

    [Fact]
    public void A_long_chain_is_refused_and_not_followed_to_the_end()
    {
        string pieces = string.Join("", Enumerable.Range(0, 3000).Select(i => FormattableString.Invariant($"  p{i}: {{ band: {{ length: p{i + 1}.A-B, width: 4 }} }}\n")));
        JobReading reading = Jobs.Read(Jobs.Head + "pieces:\n" + pieces + "  p3000: { rectangle: 40 x 10, cut: 2 }\ncloths: { c: { width: 140, lay: open } }\n");
        Assert.Contains(reading.Problems, problem => problem.What.StartsWith("More than 50 pieces", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a: { band: { length: nobody.A-B, width: 4 } }", "There is no piece \"nobody\"")]
    [InlineData("a: { band: { length: p.A-C, width: 4 } }", "p has no run of edges A-C.")]
    [InlineData("a: { band: { length: { S: 40 }, width: 4 } }", "There is no size \"S\"")]
    [InlineData("a: { band: { length: 40, width: 4, point: 40 } }", "a: The point is as long as the whole strip (40 cm).")]
    [InlineData("a: { circle_skirt: { waist: 70, length: 60, panels: 1 } }", "a: A skirt 60 cm long in 1 panel does not fit on a lay")]
    [InlineData("a: { pocket_bag: { opening: 16, width: 15, depth: 12 } }", "a: The bag is 12 cm deep, and its opening reaches down to 16 cm.")]
    public void Faults_are_told_with_their_place(string piece, string what)
    {
        JobReading reading = Jobs.Read(Jobs.Head + $"pieces: {{ p: {{ rectangle: 40 x 10, cut: 2 }}, {piece} }}\ncloths: {{ c: {{ width: 140, lay: open }} }}\n");
        Problem problem = Assert.Single(reading.Problems, problem => problem.Severity == Severity.Error);
        Assert.StartsWith(what, problem.What, StringComparison.Ordinal);
        Assert.StartsWith("pieces.a.", problem.Where.Item, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Hint);
    }

    [Fact]
    public void Measures_by_size_make_a_piece_for_each_size()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { skirt: { circle_skirt: { waist: { S: 66, M: 70 }, length: 40, part: half } } }\ncloths: { c: { width: 140, lay: open } }\nsizes: { S: 1, M: 1 }\n");
        Assert.Equal(["S", "M"], job.Pieces.Select(piece => piece.Piece.Size));
        double[] waists = [.. job.Pieces.Select(piece => piece.Piece.Cut.Count * piece.Piece.Edges.Where(edge => EdgeRun.Find(piece.Piece, [edge.From, edge.To])!.Points.Length > 2).Min(edge => edge.SeamLineLength.TotalCentimeters))];
        Assert.Equal(66, waists[0], 1);
        Assert.Equal(70, waists[1], 1);
    }
}
