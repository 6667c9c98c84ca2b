using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Tests.Input;

/// <summary>Seams from the job file to the words that the user reads.</summary>
public sealed class SeamJobTests
{
    [Fact]
    public void The_meadow_dress_meets_in_every_seam_and_carries_its_gathers()
    {
        Job job = Jobs.Good(JobReader.Read(Fixtures.PathOf("seams/job.yaml"), new DiskFiles()));
        SeamReport[] reports = [.. SeamReports.Of(job)];
        Assert.Equal(["side", "shoulder", "waist"], reports.Select(report => report.Seam.Seam.Name));
        Assert.All(reports, report => Assert.Equal(SeamVerdict.Meets, report.Walk.Verdict));
        // Side: sqrt(20² + 6²); waist: 34 cm into 19 cm, so 15 of the 25 cm between 5 and 30 are taken up.
        Assert.Equal(20.881, reports[0].Walk.FirstLength.TotalCentimeters, 3);
        Assert.Equal(15, reports[2].Walk.TakenUp.TotalCentimeters, 2);
        Assert.Equal(2.5, reports[2].Walk.Ratio, 2);
        Piece skirt = job.Pieces.Single(piece => piece.Piece.Name == "skirt").Piece;
        Assert.Equal("gather to 10 cm", Assert.Single(skirt.Lines).Label);
        Assert.Equal(2, skirt.Notches.Length);
        Assert.Equal(2, job.Pieces.Single(piece => piece.Piece.Name == "front").Piece.Notches.Length);
        // Neck: 2 (10 + sqrt(9 + 64)) + 3 cm of bias strip.
        PieceEdge strip = job.Pieces.Single(piece => piece.Piece.Name == "binding").Piece.Edges.MaxBy(edge => edge.SeamLineLength)!;
        Assert.Equal(2 * (10 + Math.Sqrt(73)) + 3, strip.SeamLineLength.TotalCentimeters, 2);
    }

    [Fact]
    public void Seams_that_are_apart_are_notes_with_a_correction()
    {
        JobReading reading = JobReader.Read(Fixtures.PathOf("seams/broken.yaml"), new DiskFiles());
        string[] notes = [.. Planner.Check(reading.Job!).Select(note => note.What + " " + note.Hint)];
        Assert.Contains(notes, note => note.Contains("front.D-C (half) is 40.8 cm, back.D-C (half) 40.0 cm; that is 8 mm apart, 3 mm being allowed. Lengthen back.D-C by 8 mm, or shorten front.D-C by 8 mm, or ease it in", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.Contains("the allowance of front.D-A is 30 mm and that of back.D-A 40 mm", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.Contains("The seam sleeve head does not meet", StringComparison.Ordinal) && note.Contains("2 mm being allowed", StringComparison.Ordinal) && note.Contains("Lengthen sleeve.B-C by 15 mm, or take 15 mm less up", StringComparison.Ordinal));
    }

    [Fact]
    public void The_tolerance_of_the_file_serves_seams_without_their_own()
    {
        const string Pieces = "pieces: { a: { rectangle: 40.5 x 10, cut: 2 }, b: { rectangle: 40 x 10, cut: 2 } }\ncloths: { c: { width: 140 } }\n";
        Job job = Jobs.Good(Jobs.Head + Pieces + "seam_tolerance: 6 mm\nseams:\n  - { join: [a.A-B, b.A-B] }\n  - { join: [a.A-B, b.A-B], tolerance: 4 mm }\n");
        Assert.Equal([SeamVerdict.Near, SeamVerdict.Apart], SeamReports.Of(job).Select(report => report.Walk.Verdict));
    }

    [Fact]
    public void Sizes_are_walked_size_by_size()
    {
        const string Svg = """
            <svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">
            <path id="a-S" d="M 0 0 H 100 V 50 H 0 Z"/><path id="a-M" d="M 0 0 H 120 V 50 H 0 Z"/><path id="b" d="M 0 0 H 100 V 60 H 0 Z"/></svg>
            """;
        const string Yaml = Jobs.Head + "pieces: { a: { outline: 'd.svg#a-{size}', cut: 2 }, b: { outline: d.svg#b, cut: 2 }, tie: { band: { length: 2 x a.A-B, width: 2 } } }\n"
            + "cloths: { c: { width: 140, lay: open } }\nsizes: { S: 1, M: 1 }\nseams: [{ name: edge, join: [a.A-B, b.A-B] }]\n";
        Job job = Jobs.Good(JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", Yaml).With("d.svg", Svg)));
        Assert.Equal([("S", SeamVerdict.Meets), ("M", SeamVerdict.Apart)], SeamReports.Of(job).Select(report => (report.Size, report.Walk.Verdict)));
        Assert.Equal([("S", 200.0), ("M", 240.0)], job.Pieces.Where(piece => piece.Piece.Name == "tie").Select(piece => (piece.Piece.Size, piece.Piece.SeamLine.Bounds.Width / 1000.0)));
    }

    [Fact]
    public void What_an_alteration_broke_is_told()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { a: { rectangle: 41 x 10, cut: 2 }, b: { rectangle: 40 x 10, cut: 2 }, c: { rectangle: 40 x 10, cut: 2 } }\ncloths: { c: { width: 140 } }\nseams: [{ join: [a.A-B, b.A-B] }]\n");
        JobPiece before = job.Pieces.Single(piece => piece.Piece.Name == "c");
        Job altered = job with { Pieces = [.. job.Pieces.Select(piece => piece.Piece.Name == "a" ? piece with { Before = before.Piece } : piece)] };
        SeamReport report = Assert.Single(SeamReports.Of(altered));
        Assert.True(report.BrokenByAlteration);
        Assert.Contains("Before the alterations it met within 0 mm.", SeamWords.Apart(report, MeasureSystem.Metric), StringComparison.Ordinal);
        Assert.Equal("10 mm apart since it was altered", SeamWords.Verdict(report, MeasureSystem.Metric));
        Assert.False(Assert.Single(SeamReports.Of(job)).BrokenByAlteration);
    }

    [Fact]
    public void A_seam_of_a_broken_piece_is_passed_over_in_silence()
    {
        JobReading reading = Jobs.Read(Jobs.Head + "pieces: { a: { rectangle: 41 x, cut: 2 }, b: { rectangle: 40 x 10, cut: 2 } }\ncloths: { c: { width: 140 } }\nseams: [{ join: [a.A-B, b.A-B] }]\n");
        Assert.Equal("pieces.a.rectangle", Jobs.OnlyProblem(reading).Where.Item);
    }
}
