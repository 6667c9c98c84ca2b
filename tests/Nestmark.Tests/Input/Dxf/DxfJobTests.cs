using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input.Dxf;

/// <summary>Jobs over pattern files: sizes, names, lines. <c>fixtures/dxf-story/quay-jacket.dxf</c> was written by ezdxf 0.18.1 (make-story.py).</summary>
public sealed class DxfJobTests
{
    // A unit of length is exact: in 25.4 mm, ft 304.8 mm (references/formats.md 2.3).
    [Theory]
    [InlineData("unit: mm", 200)]
    [InlineData("unit: cm", 2000)]
    [InlineData("unit: in", 5080)]
    [InlineData("unit: ft, scale: 50 %", 30480)]
    public void The_job_says_the_unit_of_a_drawing_that_does_not(string said, double width)
    {
        byte[] drawing = Drawings.Bytes(Drawings.TestCard.Replace("UNITS: METRIC", "AUTHOR: NOBODY", StringComparison.Ordinal));
        string yaml = Jobs.Head + $"pieces: {{ card: {{ outline: d.dxf#TESTCARD, cut: 2 }} }}\ndrawings: {{ d.dxf: {{ {said} }} }}\ncloths: {{ c: {{ width: 900, lay: open }} }}\nsizes: {{ M: 1 }}\n";
        JobDraft draft = JobReader.Draft("job.yaml", new MemoryFiles().With("job.yaml", yaml).With("d.dxf", drawing), new ProblemList(), [])!;
        Assert.Equal(width, draft.Pieces.Single().Draft.Outline.Max(vertex => vertex.Point.XMillimeters), 3);
    }

    [Fact]
    public void The_unit_of_the_job_goes_before_that_of_the_drawing_and_says_so()
    {
        string yaml = Jobs.Head + "pieces: { card: { outline: d.dxf#TESTCARD, cut: 2 } }\ndrawings: { d.dxf: { unit: in } }\ncloths: { c: { width: 900 } }\nsizes: { M: 1 }\n";
        JobReading reading = JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", yaml).With("d.dxf", Drawings.Bytes(Drawings.TestCard)));
        Assert.Contains(reading.Problems, note => note.What == "The job takes a unit of the drawing for 25.4 mm, and the drawing itself says 1 mm; the job decides.");
    }

    private static readonly byte[] Jacket = File.ReadAllBytes(Fixtures.PathOf("dxf-story/quay-jacket.dxf"));

    [Fact]
    public void The_story_job_reads_three_sizes_of_four_pieces()
    {
        JobReading reading = JobReader.Read(Fixtures.PathOf("dxf-story/job.yaml"), new DiskFiles());
        Job job = Jobs.Good(reading);
        Assert.Empty(reading.Problems.Select(problem => problem.ToString()));
        Assert.Equal(
            ["front S", "front M", "front L", "back S", "back M", "back L", "sleeve S", "sleeve M", "sleeve L", "facing S", "facing M", "facing L"],
            job.Pieces.Select(piece => piece.Piece.Title));
        Piece front = job.Pieces[1].Piece;
        // 610 - 95 mm along the fold as make-story.py draws it; the allowances of hem and neck lengthen it.
        Assert.Equal(515, front.SeamLine.Outer.Where(point => point.Y == 0).Max(point => point.XMillimeters) - front.SeamLine.Outer.Where(point => point.Y == 0).Min(point => point.XMillimeters), 0.01);
        Assert.Equal(6, front.Corners.Length);
        Assert.Single(front.Lines);
        Assert.Single(front.Marks);
        Assert.Single(front.Notches);
    }

    [Fact]
    public void The_cutting_line_of_the_drawing_is_the_one_the_job_makes_from_its_sew_line()
    {
        // The drawing's boundary was grown from the sew line by another library; the job adds the same 10 mm itself.
        Job cut = Jobs.Good(Read("outline: j.dxf#SLEEVE, cut: 1 pair, line: cut", "{ M: 1 }"));
        Job seam = Jobs.Good(Read("outline: j.dxf#SLEEVE, cut: 1 pair, line: seam, seam: 1", "{ M: 1 }"));
        double drawn = cut.Pieces[0].Piece.CuttingLine.AreaSquareMillimeters;
        double made = seam.Pieces[0].Piece.CuttingLine.AreaSquareMillimeters;
        Assert.InRange(made / drawn, 0.998, 1.002);
    }

    [Theory]
    [InlineData("FRONT", "{ M: 1, L: 2 }", "front M, front L")]
    [InlineData("FRONT-{size}", "{ S: 1 }", "front S")]
    [InlineData("FRONT_M", "{ S: 1, L: 1 }", "front")]
    [InlineData("FRONT-L", "{ S: 1, M: 1 }", "front")]
    public void The_sizes_of_the_job_choose_among_those_of_the_drawing(string name, string sizes, string pieces) =>
        Assert.Equal(pieces, string.Join(", ", Jobs.Good(Read($"outline: \"j.dxf#{name}\", cut: 1 on fold", sizes)).Pieces.Select(piece => piece.Piece.Title)));

    [Theory]
    [InlineData("FRONT", "", "The drawing holds FRONT in the sizes S, M, L, and the job has no sizes. Add sizes: { S: 1 }, or name one, as #FRONT-S.")]
    [InlineData("FRONT", "{ XL: 1 }", "The drawing holds FRONT not in size XL, only in S, M, L. Use these sizes; or write #FRONT-S to cut that one in every size.")]
    [InlineData("FRNT", "{ M: 1 }", "The drawing has no piece FRNT. Did you mean FRONT? There are: FRONT, BACK, SLEEVE, FACING.")]
    public void Sizes_and_names_that_are_not_there_are_answered_with_those_that_are(string name, string sizes, string problem)
    {
        JobReading reading = Read($"outline: j.dxf#{name}, cut: 1 on fold", sizes);
        Assert.Equal("job.yaml:4:29 (pieces.front.outline): " + problem, Jobs.OnlyProblem(reading).ToString());
    }

    [Fact]
    public void Without_the_key_line_the_boundary_is_cut_as_drawn_and_a_note_says_so()
    {
        JobReading reading = Read("outline: j.dxf#FACING, cut: 1 pair, seam: 2", "{ M: 1 }");
        Piece facing = Jobs.Good(reading).Pieces[0].Piece;
        Assert.Equal(facing.CuttingLine.AreaSquareMillimeters, facing.SeamLine.AreaSquareMillimeters);
        Assert.StartsWith("The outline is the cutting line, as pattern files draw it;", Jobs.OnlyProblem(reading).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_listing_tells_what_the_drawing_holds_and_says()
    {
        DrawingReading listing = DrawingListing.Read("j.dxf", new MemoryFiles().With("j.dxf", Jacket));
        Assert.Empty(listing.Problems.Select(problem => problem.ToString()));
        Assert.Equal(12, listing.Pieces.Length);
        Assert.Equal("FRONT S quantity 1, category JACKET, material SHELL, annotation POCKET ON LINE, mirror line, sew line",
            $"{listing.Pieces[0].Name} {listing.Pieces[0].Size} {string.Join(", ", listing.Pieces[0].Said)}");
    }

    private static JobReading Read(string piece, string sizes) => JobReader.Read("job.yaml", new MemoryFiles()
        .With("job.yaml", Jobs.Head + $"pieces: {{ front: {{ {piece} }} }}\n" + (sizes.Length > 0 ? $"sizes: {sizes}\n" : "") + "cloths: { shell: { width: 150 } }\n")
        .With("j.dxf", Jacket));
}
