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

    // Side seam: 60 cm along the grain, 4 cm across; shortened by 3 of 60 cm (evenly, 57 by 4): sqrt(57² + 4²) against sqrt(60² + 4²), 29.9 mm less.
    [Fact]
    public void The_alteration_that_broke_a_seam_is_named_and_the_one_that_mended_it()
    {
        JobReading reading = JobReader.Read(Fixtures.PathOf("alterations/broken-seam.yaml"), new DiskFiles());
        Job job = Jobs.Good(reading);
        SeamReport[] reports = [.. SeamReports.Of(job)];
        SeamTurn[] side = [.. reports[0].Turns];
        Assert.Equal([(SeamTurnKind.Broken, "front: shortened 3 cm at 20 from A", 14), (SeamTurnKind.Mended, "back: shortened 3 cm at 20 from A", 16)], side.Select(turn => (turn.Kind, turn.Alteration, turn.Where.Line)));
        Assert.Equal(Math.Sqrt(57 * 57 + 16) - Math.Sqrt(60 * 60 + 16), side[0].Difference.TotalCentimeters, 0.02);
        Assert.Equal(SeamVerdict.Meets, reports[0].Walk.Verdict);
        SeamTurn wrist = Assert.Single(reports[1].Turns);
        Assert.Equal((SeamTurnKind.Broken, 15), (wrist.Kind, wrist.Where.Line));
        Assert.Contains("What broke it: cuff: widened 2 cm at 10 from A (", SeamWords.Apart(reports[1], MeasureSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("broken-seam.yaml:15).", SeamWords.Apart(reports[1], MeasureSystem.Metric), StringComparison.Ordinal);
        Assert.StartsWith("The seam side was mended by back: shortened 3 cm at 20 from A (", SeamWords.Turn(reports[0], side[1], MeasureSystem.Metric), StringComparison.Ordinal);
        Assert.Empty(reports[2].Turns);
    }

    [Fact]
    public void The_corner_that_reaches_too_far_is_named_with_the_notch_it_is_counted_from()
    {
        // Hem 8 mm too low on a, below the notch; above it both are alike.
        const string Svg = """
            <svg xmlns="http://www.w3.org/2000/svg" width="500mm" height="300mm" viewBox="0 0 500 300">
            <g id="a"><path d="M 0 100 H 408 V 0 H 0 Z"/><line class="notch" x1="300" y1="100" x2="300" y2="95"/></g>
            <g id="b"><path d="M 0 100 H 400 V 0 H 0 Z"/><line class="notch" x1="300" y1="100" x2="300" y2="95"/></g></svg>
            """;
        const string Yaml = Jobs.Head + "pieces: { a: { outline: d.svg#a, cut: 2 }, b: { outline: d.svg#b, cut: 2 } }\ncloths: { c: { width: 140 } }\nseams: [{ name: side, join: [a.A-B, b.A-B] }]\n";
        Job job = Jobs.Good(JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", Yaml).With("d.svg", Svg)));
        Problem note = Assert.Single(Planner.Check(job), note => note.What.StartsWith("At the end", StringComparison.Ordinal));
        Assert.Equal("At the end a.B / b.B of the seam side the edges a.B-C and b.B-C do not meet: counted from the notch 30.0 cm along, a.B reaches 8 mm further.", note.What);
        Assert.Equal("Move the corner a.B back by 8 mm along the seam, or b.B out by as much.", note.Hint);
    }

    [Fact]
    public void Level_hems_at_different_heights_are_told_though_the_seam_meets()
    {
        // Both sides 50 cm: straight, and slanted 14 cm over 48 cm of height (14² + 48² = 50²).
        const string Pieces = "pieces: { a: { polygon: [[0, 0], [50, 0], [50, 20], [0, 20]], cut: 2 }, b: { polygon: [[0, 0], [48, 0], [48, 20], [0, 34]], cut: 2 } }\ncloths: { c: { width: 140 } }\n";
        Job job = Jobs.Good(Jobs.Head + Pieces + "seams: [{ name: side, join: [a.C-D, b.C-D] }]\n");
        Problem note = Assert.Single(Planner.Check(job), note => note.What.Contains("differ in height", StringComparison.Ordinal));
        Assert.Equal("The seam side meets, but between their level edges the pieces differ in height by 20 mm: a.C to a.D is 50.0 cm along the grain, b.C to b.D 48.0 cm.", note.What);
        Job curved = Jobs.Good(Jobs.Head + Pieces.Replace("[0, 34]]", "[0, 34], [-0.5, 17]]", StringComparison.Ordinal) + "seams: [{ name: side, join: [a.C-D, b.C-D] }]\n");
        Assert.DoesNotContain(Planner.Check(curved), note => note.What.Contains("differ in height", StringComparison.Ordinal));
    }

    [Theory]
    // Two alterations that together leave the side 50 cm long (48² + 14² = 50²) and put the back's hem 2 cm higher.
    [InlineData("[{ shorten: back, by: 2, at: 25 from A, sides: straight }, { move: back, corner: D, across: 14 }]", "front.C to front.D is 50.0 cm along the grain, back.C to back.D 48.0 cm")]
    // The same on both pieces: they agree again.
    [InlineData("[{ shorten: [front, back], by: 2, at: 25 from A, sides: straight }, { move: [front, back], corner: D, across: 14 }]", "")]
    // A side slanted about its waist end keeps its length, and its hem curves up to it: nothing is said of heights.
    [InlineData("[{ spread: back, by: 6, from: middle of D-A, to: middle of B-C }]", "")]
    public void An_alteration_that_puts_a_level_hem_higher_is_told_and_a_hem_that_curves_up_is_not(string alter, string heights)
    {
        const string Pieces = "pieces: { front: { polygon: [[0, 0], [50, 0], [50, 20], [0, 20]], cut: 2 }, back: { polygon: [[0, 0], [50, 0], [50, 20], [0, 20]], cut: 2 } }\ncloths: { c: { width: 140 } }\nseams: [{ name: side, join: [front.C-D, back.C-D] }]\n";
        Job job = Jobs.Good(Jobs.Head + Pieces + $"alter: {alter}\n");
        Assert.DoesNotContain(Planner.Check(job), note => note.What.StartsWith("The seam side does not meet", StringComparison.Ordinal));
        string[] told = [.. Planner.Check(job).Where(note => note.What.Contains("differ in height", StringComparison.Ordinal)).Select(note => note.What)];
        Assert.Equal(heights.Length > 0 ? 1 : 0, told.Length);
        Assert.All(told, what => Assert.Contains(heights, what, StringComparison.Ordinal));
    }

    [Fact]
    public void A_waist_raised_on_one_piece_alone_is_told_at_the_side_seam()
    {
        const string Yaml = Jobs.Head + "pieces: { front: { polygon: [[0, 0], [40, 0], [40, 20], [0, 20]], cut: 2 }, back: { polygon: [[0, 0], [40, 0], [40, 20], [0, 20]], cut: 2 } }\n"
            + "cloths: { c: { width: 140 } }\nseams: [{ name: side, join: [front.C-D, back.C-D] }]\nalter: [{ raise: waist, by: 2, below: { front: B-C } }]\n";
        Job job = Jobs.Good(Yaml);
        Assert.Contains(Planner.Check(job), note => note.What.Contains("side", StringComparison.Ordinal) && note.What.Contains("42.0 cm", StringComparison.Ordinal) && note.What.Contains("40.0 cm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_seam_of_a_broken_piece_is_passed_over_in_silence()
    {
        JobReading reading = Jobs.Read(Jobs.Head + "pieces: { a: { rectangle: 41 x, cut: 2 }, b: { rectangle: 40 x 10, cut: 2 } }\ncloths: { c: { width: 140 } }\nseams: [{ join: [a.A-B, b.A-B] }]\n");
        Assert.Equal("pieces.a.rectangle", Jobs.OnlyProblem(reading).Where.Item);
    }
}
