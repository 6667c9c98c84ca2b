using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Cli;

public sealed class CheckCommandTests
{
    [Fact]
    public void A_sound_job_shows_its_pieces_and_ends_with_0()
    {
        Piece plain = TestPieces.Rectangle("tie", 900, 60, "2");
        Piece front = new()
        {
            Name = "front",
            Size = "M",
            Cut = new CutQuantity(1, CutKind.OnFold),
            SeamLine = plain.SeamLine,
            CuttingLine = plain.CuttingLine,
            Grainline = plain.Grainline,
            FoldEdge = new Segment(new(0, 0), new(900_000, 0)),
            CenterLine = null,
            Corners = plain.Corners,
            Edges = [Edge("A", "B", 0, EdgeKind.Fold), Edge("B", "C", 15, EdgeKind.Cut), Edge("C", "D", 15, EdgeKind.Cut), Edge("D", "A", 40, EdgeKind.Cut)],
            Notches = [],
            Lines = [],
            Marks = [],
            Grain = GrainRule.Along,
            Tilt = null,
        };
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Folded, plain, front) with { Sizes = [new SizeCount("M", 1)] } };
        Assert.Equal(0, run.Run("check job.yaml"));
        Approve.Text("check.txt", run.Out);
    }

    [Fact]
    public void Problems_are_counted_and_notes_are_not()
    {
        Problem fault = new(Severity.Error, new Place("job.yaml", 7, 5, "pieces.x"), "Wrong.", "Mend it.");
        CliRun run = new() { Job = null, Problems = [fault, fault with { Severity = Severity.Note }, fault] };
        Assert.Equal(1, run.Run("check job.yaml"));
        Assert.Equal(
            "job.yaml:7:5 (pieces.x): Wrong. Mend it.\njob.yaml:7:5 (pieces.x): note: Wrong. Mend it.\njob.yaml:7:5 (pieces.x): Wrong. Mend it.\n2 problems\n",
            run.Out);
    }

    [Fact]
    public void A_piece_that_cannot_lie_on_its_cloth_is_a_problem()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Folded, TestPieces.Rectangle("yoke", 400, 200, "1")) };
        Assert.Equal(1, run.Run("check job.yaml"));
        Assert.EndsWith(
            "job.yaml:4:3 (pieces.yoke): yoke is cut once, and on folded cloth a single piece would come out twice; lay the cloth open, or cut 2.\n1 problem\n",
            run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_folder_no_piece_sheet_is_written()
    {
        CliRun run = new();
        run.Run("check job.yaml");
        Assert.Null(run.CheckOptions);
        Assert.DoesNotContain("Written", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_gets_the_piece_sheet_even_where_a_piece_cannot_lie_on_its_cloth()
    {
        CliRun run = new() { Job = CliRun.JobOf(TestCloths.Folded, TestPieces.Rectangle("yoke", 400, 200, "1")) };
        Assert.Equal(1, run.Run("check job.yaml --out sheets --force"));
        Assert.Equal("sheets", run.CheckOptions?.Folder);
        Assert.Equal(Nestmark.Output.Replacing.AnyFile, run.CheckOptions?.Replacing);
        Assert.EndsWith("1 problem\nWritten to sheets: pieces.pdf\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_cannot_be_read_has_no_piece_sheet()
    {
        CliRun run = new() { Job = null, Problems = [new Problem(Severity.Error, new Place("job.yaml", 7, 5, ""), "Wrong.", "Mend it.")] };
        Assert.Equal(1, run.Run("check job.yaml --out sheets"));
        Assert.EndsWith("No piece sheet was written: it can be drawn once the job can be read.\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_sheet_that_cannot_be_written_is_a_problem()
    {
        CliRun run = new() { WriteProblems = [new Problem(Severity.Error, new Place("sheets", 0, 0, ""), "In the way.", "Move it.")] };
        Assert.Equal(1, run.Run("check job.yaml --out sheets"));
        Assert.Equal("sheets: In the way. Move it.\n", run.Error);
    }

    private static PieceEdge Edge(string from, string to, double millimeters, EdgeKind kind) =>
        new(from, to, Length.FromMillimeters(100), Length.FromMillimeters(millimeters), kind);
}
