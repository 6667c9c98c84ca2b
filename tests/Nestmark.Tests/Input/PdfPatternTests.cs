using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Input.Outlines;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>
/// PDF patterns written by cairo and by hand after ISO 32000-1 (<c>fixtures/pdf/make.py</c>, checked by qpdf). Expected places are that script's own numbers,
/// in millimeters; read within 0.02 mm, since cairo rounds to a thousandth of a point and curves are flattened outward within 0.05 mm.
/// </summary>
public sealed class PdfPatternTests
{
    private const double Tolerance = 0.02;

    [Fact]
    public void A_single_page_gives_its_pieces_by_the_text_in_them()
    {
        JobReading reading = Read("single.yaml");
        Jobs.Good(reading);
        CheckFront(Drawn("single.yaml", "front"), 0, 0);
        CheckCorners(Drawn("single.yaml", "pocket"), 0, 0, (400, 60), (480, 60), (480, 150), (400, 150));
        Assert.Contains(reading.Problems, problem => problem.What == "The test square measures 50 mm, as it should.");
    }

    [Fact]
    public void Short_strokes_on_the_outline_are_notches_and_the_line_beside_the_word_grain_is_the_grainline()
    {
        DrawnPiece front = Drawn("single.yaml", "front");
        Near((200, 60), Assert.Single(front.Notches).Place, 0, 0);
        Near((120, 120), front.Grainline!.Start, 0, 0);
        Near((300, 120), front.Grainline.End, 0, 0);
    }

    [Fact]
    public void Trimmed_pages_are_joined_to_the_sheet_they_were_cut_from()
    {
        // Three columns of 190 mm and two rows of 277 mm; the sheet's own lowest left is that of the joined pages.
        Jobs.Good(Read("tiles.yaml"));
        CheckFront(Drawn("tiles.yaml", "front"), 0, 0);
        Near((300, 120), Drawn("tiles.yaml", "front").Grainline!.End, 0, 0);
        CheckCorners(Drawn("tiles.yaml", "pocket"), 0, 0, (400, 60), (480, 60), (480, 150), (400, 150));
    }

    [Fact]
    public void Pages_that_overlap_after_trimming_are_joined_too()
    {
        Jobs.Good(Read("tiles-overlap.yaml"));
        CheckFront(Drawn("tiles-overlap.yaml", "front"), 0, 0);
    }

    // Expected places as in the joined pages above; each group of pages that hang together is a sheet of its own, from the lowest left of its window.
    [Theory]
    [InlineData("tiles.yaml", "drawings: { tiles.pdf: { tiles: { pages: [[2, 3, 4], [5, 6, 7]], trim: 10 } } }", "[[5, 6]]")]
    [InlineData("tiles-overlap.yaml", "drawings: { tiles-overlap.pdf: { tiles: { pages: [[2, 3, 4], [5, 6, 7]], trim: 10, overlap: 12 } } }", "[[5, 6]]")]
    public void Pages_find_their_neighbors_by_the_lines_that_go_on(string job, string tiles, string rows)
    {
        JobReading reading = Read(job, tiles, "");
        Jobs.Good(reading);
        Assert.Contains(reading.Problems, note => note.What.StartsWith($"The pages were joined as {rows}, by ", StringComparison.Ordinal));
        CheckFront(Drawn(job, "front", 0, tiles, ""), 0, 0);
    }

    [Fact]
    public void Pages_whose_lines_are_cut_off_at_the_margin_are_joined_without_a_border()
    {
        // make.py moves the sheet up by 10 mm; the pocket's two pages lie 380 mm to the right and hang together alone.
        JobReading reading = Read("tiles-cut.yaml");
        Jobs.Good(reading);
        Assert.Contains(reading.Problems, note => note.What.StartsWith("The pages were joined as [[1, 2], [4, 5]] and [[3], [6]], by 7 lines", StringComparison.Ordinal));
        CheckFront(Drawn("tiles-cut.yaml", "front"), 0, 10);
        CheckCorners(Drawn("tiles-cut.yaml", "pocket"), -380, 10, (400, 60), (480, 60), (480, 150), (400, 150));
    }

    [Theory]
    [InlineData("tiles.yaml", "[5, 6, 7]", "[6, 5, 7]", "page 5 and page 7")]
    [InlineData("tiles-overlap.yaml", "overlap: 12", "overlap: 8", "page 5 and page 6")]
    public void Given_tiles_whose_lines_do_not_meet_are_joined_with_a_note(string job, string right, string wrong, string neighbors)
    {
        Problem note = Assert.Single(Read(job, right, wrong).Problems, IsApart);
        Assert.Equal(Severity.Note, note.Severity);
        Assert.Contains(neighbors, note.What, StringComparison.Ordinal);
        Assert.EndsWith(".tiles", note.Where.Item, StringComparison.Ordinal);
        Assert.DoesNotContain(Read(job).Problems, IsApart);

        static bool IsApart(Problem problem) => problem.What.StartsWith("The pages are joined as tiles says, but lines do not go on between ", StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_page_is_missing_the_pages_are_not_joined_and_the_key_is_named()
    {
        JobReading reading = Read("tiles-cut.yaml", "tiles-cut.pdf", "tiles-lost.pdf");
        Problem note = Assert.Single(reading.Problems, note => note.What.StartsWith("Lines run off the edges of pages", StringComparison.Ordinal));
        Assert.Contains("drawings: { FILE: { tiles: { pages:", note.Hint, StringComparison.Ordinal);
        Assert.Contains(reading.Problems, problem => problem.Severity == Severity.Error && problem.What.Contains("Tern front", StringComparison.Ordinal));
    }

    [Fact]
    public void Layers_are_sizes_where_the_job_says_so()
    {
        CheckYokes("layers.yaml");
        // The layer Notes is switched off in the file, so its line around all is no piece.
        Assert.DoesNotContain(Read("layers.yaml").Problems, problem => problem.What.Contains("Notes", StringComparison.Ordinal));
    }

    [Fact]
    public void Line_colors_are_sizes_where_the_job_says_so() => CheckYokes("nested.yaml");

    [Fact]
    public void Dashes_are_sizes_where_the_job_says_so()
    {
        JobReading reading = Read("nested.yaml", "color: { S: \"#cc0000\", M: \"#0000cc\" }", "dash: { S: solid, M: \"17.008 8.504\" }");
        Job job = Jobs.Good(reading);
        Assert.Equal([(150, 100), (160, 110)], job.Pieces.Select(piece => (Math.Round(piece.Piece.SeamLine.Bounds.Width / 1000.0, 1), Math.Round(piece.Piece.SeamLine.Bounds.Height / 1000.0, 1))));
    }

    [Fact]
    public void Sizes_on_each_other_without_a_choice_are_said_with_the_kinds_of_lines()
    {
        JobReading reading = Read("nested.yaml", "drawings: { nested.pdf: { select: { color: { S: \"#cc0000\", M: \"#0000cc\" } } } }", "");
        Assert.Contains(reading.Problems, problem => problem.What.Contains("color #cc0000, dash solid (1)", StringComparison.Ordinal));
    }

    [Fact]
    public void UserUnit_rotation_crop_box_and_form_matrix_are_taken_into_account()
    {
        // make.py: the form's rectangle lies at x 100..250, y 200..300 mm of the file; shown: x = (y - 150) * 2, y = (250 - (x - 80)) * 2.
        Jobs.Good(Read("turned.yaml"));
        CheckCorners(Drawn("turned.yaml", "sail"), 0, 0, (100, 160), (300, 160), (300, 460), (100, 460));
    }

    [Fact]
    public void Strokes_that_miss_each_other_are_joined_with_a_note()
    {
        JobReading reading = Read("strokes.yaml");
        Jobs.Good(reading);
        Assert.Contains(reading.Problems, note => note.What.StartsWith("The outline had a gap of 0.5 mm at 250.0, 89.5 mm from the lowest left of page 1", StringComparison.Ordinal));
        CheckCorners(Drawn("strokes.yaml", "band"), 0, 0, (50, 50), (250, 50), (250, 90), (50, 90));
    }

    [Fact]
    public void A_print_that_was_shrunk_is_refused_with_the_scale_to_write()
    {
        JobReading reading = Read("single.yaml", "single.pdf", "shrunk.pdf");
        Problem problem = Assert.Single(reading.Problems, problem => problem.Severity == Severity.Error);
        Assert.Equal("The test square measures 37.5 mm and its true side is 50 mm: the drawing is 25 % too small, as if drawn at 72 dpi and read at 96.", problem.What);
        Assert.EndsWith("write scale: 133.33 %.", problem.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shrunk_print_with_its_scale_is_as_large_as_the_original()
    {
        JobReading reading = Read("single.yaml", "single.pdf: { ", "shrunk.pdf: { scale: 133.3333 %, ", "single.pdf#", "shrunk.pdf#");
        Job job = Jobs.Good(reading);
        Assert.Equal(300, job.Pieces[0].Piece.SeamLine.Bounds.Width / 1000.0, 1);
    }

    [Fact]
    public void Without_a_test_square_one_is_asked_for() =>
        Assert.Contains(Read("strokes.yaml").Problems, problem => problem.Hint.Contains("test_square: 5 cm", StringComparison.Ordinal));

    [Fact]
    public void A_scanned_pattern_is_refused_with_a_remedy()
    {
        Problem problem = Error("strokes.yaml", "strokes.pdf", "scanned.pdf");
        Assert.StartsWith("The PDF holds pictures and no lines", problem.What, StringComparison.Ordinal);
        Assert.StartsWith("Trace the pieces", problem.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_locked_pattern_is_refused_with_a_remedy() =>
        Assert.Equal("The PDF is locked with a password.", Error("strokes.yaml", "strokes.pdf", "locked.pdf").What);

    [Fact]
    public void What_is_no_pdf_is_refused() =>
        Assert.StartsWith("The PDF is not readable", Error("strokes.yaml", "strokes.pdf", "make.py", ".pdf").What, StringComparison.Ordinal);

    [Fact]
    public void A_name_that_no_outline_holds_is_said_with_those_that_do()
    {
        Problem problem = Error("single.yaml", "#Tern front", "#Tern frond");
        Assert.Contains("Tern front", problem.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trim: 10", "trim: 110", "leave nothing")]
    [InlineData("[5, 6, 7]", "[5, 6, 70]", "page 70")]
    [InlineData("[5, 6, 7]", "[5, 6, 6]", "stands twice")]
    [InlineData("[5, 6, 7]", "[5, 6, x]", "rows of numbers")]
    public void Tiles_that_cannot_be_are_refused(string good, string bad, string what) =>
        Assert.Contains(Read("tiles.yaml", good, bad).Problems, problem => problem.Severity == Severity.Error && problem.What.Contains(what, StringComparison.Ordinal));

    private static void CheckFront(DrawnPiece front, double x, double y)
    {
        Assert.All([(60, 60), (360, 60), (360, 200), (60, 240)], ((double, double) corner) => Assert.Contains(front.Outline, vertex => IsNear(corner, vertex.Point, x, y)));
        // The middle of the curve with the control points (260, 200) and (160, 240): x = (360 + 3*260 + 3*160 + 60) / 8 = 210, y = 220.
        Point middle = Point.FromMillimeters(210 + x, 220 + y);
        Assert.InRange(OutlineDistance.Nearest(front.Outline, middle).Distance.TotalMillimeters, 0, 0.07);
    }

    private static void CheckCorners(DrawnPiece piece, double x, double y, params (double, double)[] corners)
    {
        Assert.All(corners, corner => Assert.Contains(piece.Outline, vertex => IsNear(corner, vertex.Point, x, y)));
        Box box = Box.Around([.. piece.Outline.Select(vertex => vertex.Point)]);
        Assert.Equal(corners.Max(corner => corner.Item1) + x, box.MaxX / 1000.0, Tolerance);
        Assert.Equal(corners.Min(corner => corner.Item2) + y, box.MinY / 1000.0, Tolerance);
    }

    private static void CheckYokes(string job)
    {
        Job read = Jobs.Good(Read(job));
        Assert.Equal(["S", "M"], read.Pieces.Select(piece => piece.Piece.Size));
        CheckCorners(Drawn(job, "yoke", 0), 0, 0, (50, 50), (200, 50), (200, 150), (50, 150));
        CheckCorners(Drawn(job, "yoke", 1), 0, 0, (50, 50), (210, 50), (210, 160), (50, 160));
    }

    private static void Near((double X, double Y) expected, Point found, double x, double y) => Assert.True(IsNear(expected, found, x, y), $"{found.XMillimeters}, {found.YMillimeters}");

    private static bool IsNear((double X, double Y) expected, Point found, double x, double y) =>
        Math.Abs(found.XMillimeters - expected.X - x) <= Tolerance && Math.Abs(found.YMillimeters - expected.Y - y) <= Tolerance;

    private static Problem Error(string job, params string[] replacements) =>
        Read(job, replacements).Problems.First(problem => problem.Severity == Severity.Error);

    private static JobReading Read(string job, params string[] replacements) => JobReader.Read("job.yaml", Files(job, replacements));

    /// <summary>The fixtures of the folder, the job's text changed by pairs of old and new; a text file may stand in for the last pair's drawing.</summary>
    private static MemoryFiles Files(string job, params string[] replacements)
    {
        MemoryFiles files = new();
        string text = File.ReadAllText(Fixtures.PathOf("pdf/" + job));
        for (int i = 0; i + 1 < replacements.Length; i += 2)
        {
            Assert.Contains(replacements[i], text, StringComparison.Ordinal);
            text = text.Replace(replacements[i], replacements[i + 1], StringComparison.Ordinal);
        }
        if (replacements is [_, "make.py", ".pdf"])
            text = text.Replace("make.py", "make.pdf", StringComparison.Ordinal);
        foreach (string path in Directory.GetFiles(Fixtures.PathOf("pdf"), "*.pdf"))
            files.With(Path.GetFileName(path), File.ReadAllBytes(path));
        return files.With("make.pdf", File.ReadAllBytes(Fixtures.PathOf("pdf/make.py"))).With("job.yaml", text);
    }

    private static DrawnPiece Drawn(string job, string piece, int index = 0, params string[] replacements)
    {
        JobDraft draft = JobReader.Draft("job.yaml", Files(job, replacements), new ProblemList(), [])!;
        DraftedPiece drafted = draft.Pieces.Where(one => one.Draft.Name == piece).ElementAt(index);
        return new DrawnPiece(drafted.Draft.Outline) { Notches = drafted.Draft.Notches, Grainline = drafted.Draft.Grainline, Lines = drafted.Draft.Lines };
    }
}
