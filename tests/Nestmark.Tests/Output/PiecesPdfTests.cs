using Nestmark.Geometry;
using Nestmark.Output;
using Nestmark.Pieces;
using Nestmark.Tests.Cli;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

/// <summary>The piece sheet, read back by another reader (PdfPig). Expected numbers are plain geometry.</summary>
public sealed class PiecesPdfTests
{
    [Fact]
    public void A_piece_is_drawn_to_the_scale_that_it_names()
    {
        // Seam line 40 x 20 cm, 1.5 cm around it: cutting line 43 x 23 cm, on A4 at 1 : 2.5 = 172 x 92 mm.
        PrintedPage page = PrintedPage.Read(PiecesPdf.Write(JobWith(Band(400)), []))[1];
        Assert.Contains("scale 1 : 2.5", page.Text, StringComparison.Ordinal);
        Assert.Contains(page.Rectangles, size => Math.Abs(size.Width - 172) < 0.05 && Math.Abs(size.Height - 92) < 0.05);
        Assert.Contains(page.Rectangles, size => Math.Abs(size.Width - 160) < 0.05 && Math.Abs(size.Height - 80) < 0.05);
    }

    [Fact]
    public void Edges_carry_their_letters_and_lengths()
    {
        string text = PrintedPage.Read(PiecesPdf.Write(JobWith(Band(400)), []))[1].Text;
        Assert.Contains("A-B  40 cm", text, StringComparison.Ordinal);
        Assert.Contains("B-C  20 cm", text, StringComparison.Ordinal);
        Assert.Contains("Cutting line: 43 cm along the grain, 23 cm across.", text, StringComparison.Ordinal);
        Assert.Contains("Area inside the cutting line: 989 cm²", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_notch_is_told_by_its_edge_and_its_distance_from_the_corner()
    {
        string text = PrintedPage.Read(PiecesPdf.Write(JobWith(Band(400)), []))[1].Text;
        Assert.Contains("waist: on A-B, 12 cm from A.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_altered_piece_shows_its_outline_before_and_what_was_done()
    {
        JobPiece altered = JobWith(Band(400)).Pieces[0] with
        {
            Before = Band(360),
            BeforeShift = Point.FromMillimeters(5, 0),
            Changes = [new PieceChange(
                "Lengthened 4 cm at a line.", 72_000, 80_000, [new EdgeChange("A-B", Length.FromMillimeters(360), Length.FromMillimeters(400))], new Place("job.yaml", 9, 1, "alter"))],
        };
        PrintedPage page = PrintedPage.Read(PiecesPdf.Write(JobWith(Band(400)) with { Pieces = [altered] }, []))[1];
        Assert.Contains(page.Rectangles, size => Math.Abs(size.Width - 390 / 2.5) < 0.05 && Math.Abs(size.Height - 92) < 0.05);
        Assert.Contains("Lengthened 4 cm at a line.", page.Text, StringComparison.Ordinal);
        Assert.Contains("720 cm² before", page.Text, StringComparison.Ordinal);
        Assert.Contains("+4.0", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_without_alterations_has_no_second_outline() =>
        Assert.DoesNotContain("before the alterations", PrintedPage.Read(PiecesPdf.Write(JobWith(Band(400)), []))[1].Text, StringComparison.Ordinal);

    [Fact]
    public void Every_fixture_gets_a_page_a_piece_after_the_list()
    {
        Nestmark.Input.JobReading reading = Nestmark.Input.JobReader.Read(Fixtures.PathOf("harbour-smock/job.yaml"), new Nestmark.Input.DiskFiles());
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(PiecesPdf.Write(reading.Job!, reading.Problems));
        Assert.Equal(reading.Job!.Pieces.Length + 1, pages.Count);
        for (int i = 0; i < reading.Job.Pieces.Length; i++)
            Assert.StartsWith(reading.Job.Pieces[i].Piece.Title, pages[i + 1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void More_notes_and_pieces_than_a_page_holds_go_on_behind()
    {
        Job job = JobWith([.. Enumerable.Range(0, 100).Select(i => Band(100 + i))]);
        Problem[] notes = [.. Enumerable.Range(0, 150).Select(i => new Problem(Severity.Note, new Place("a.svg", i + 1, 1, "#x"), "A gap was closed.", "Join the ends."))];
        IReadOnlyList<PrintedPage> pages = PrintedPage.Read(PiecesPdf.Write(job, notes));
        string lists = string.Join(" ", pages.Where(page => page.Text.Contains("halves as drawn", StringComparison.Ordinal)).Select(page => page.Text));
        Assert.Contains("a.svg:1:1", lists, StringComparison.Ordinal);
        Assert.Contains("a.svg:150:1", lists, StringComparison.Ordinal);
        Assert.DoesNotContain(pages.SelectMany(page => page.Letters), letter => letter.StartBaseLine.Y < 0);
    }

    [Fact]
    public void The_same_job_gives_the_same_bytes() =>
        Assert.Equal(PiecesPdf.Write(JobWith(Band(400)), []), PiecesPdf.Write(JobWith(Band(400)), []));

    private static Job JobWith(params Piece[] pieces) => CliRun.JobOf(TestCloths.Open, pieces);

    private static Piece Band(double lengthMillimeters)
    {
        PieceDraft draft = new()
        {
            Name = "band",
            Size = "",
            Outline = [.. Polygon.Rectangle(Length.FromMillimeters(lengthMillimeters), Length.FromMillimeters(200)).Outer.Select(point => new OutlineVertex(point, VertexKind.Joint))],
            Meaning = OutlineMeaning.SeamLine,
            Cut = new CutQuantity(1, CutKind.Copies),
            Seam = Length.FromMillimeters(15),
            Edges = [],
            PointLimitRatio = 2.5,
            Grainline = null,
            FoldLine = null,
            FoldEdge = "",
            Notches = [new PieceMark("waist", Point.FromMillimeters(lengthMillimeters > 120 ? 120 : 50, 0))],
            Lines = [new PieceLine("dart", [Point.FromMillimeters(60, 60), Point.FromMillimeters(60, 120)])],
            Marks = [new PieceMark("button", Point.FromMillimeters(30, 100))],
            Grain = GrainRule.Along,
            Tilt = null,
        };
        return PieceMaking.Make(draft).Piece!;
    }
}
