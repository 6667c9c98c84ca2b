using Nestmark.Geometry;
using Nestmark.Input.Outlines;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input.Dxf;

/// <summary>
/// Pattern files after ASTM D6673 and ANSI/AAMA-292. Layers, texts and the shape of the file are those of references/formats.md 1.3 to 1.7:
/// from memory, to be checked against the standard.
/// </summary>
public sealed class PatternDxfTests
{
    [Fact]
    public void The_test_card_of_the_reference_is_read_whole()
    {
        DrawnPiece card = Drawings.Piece(Drawings.Bytes(Drawings.TestCard), "TESTCARD", "2");
        Assert.Equal("0 0, 200 0, 200 100, 0 100", Drawings.Text(card));
        Assert.All(card.Outline, vertex => Assert.Equal(VertexKind.Marked, vertex.Kind));
        Assert.Equal(OutlineMeaning.CuttingLine, card.Meaning);
        Assert.Equal(new Segment(Point.FromMillimeters(20, 50), Point.FromMillimeters(180, 50)), card.Grainline);
        Assert.Equal([new PieceMark("", Point.FromMillimeters(100, 0))], card.Notches.ToArray());
        Assert.Equal([new PieceMark("", Point.FromMillimeters(100, 50))], card.Marks.ToArray());
        Assert.Equal(["quantity 2", "material SHELL"], card.Said.ToArray());
        Assert.Equal(":16", card.DrawnAt);
    }

    [Fact]
    public void Inches_are_taken_from_the_UNITS_text() =>
        Assert.Equal(
            "0 0, 5080 0, 5080 2540, 0 2540",
            Drawings.Text(Drawings.Piece(Drawings.Bytes(Drawings.TestCard.Replace("METRIC", "ENGLISH", StringComparison.Ordinal)), "TESTCARD")));

    [Theory]
    [InlineData("9 $INSUNITS | 70 5", "0 0, 2000 0, 2000 1000, 0 1000", "")]
    [InlineData("9 $INSUNITS | 70 1", "0 0, 5080 0, 5080 2540, 0 2540", "")]
    [InlineData("9 $MEASUREMENT | 70 1", "0 0, 200 0, 200 100, 0 100", "The drawing says its units only by $MEASUREMENT; millimeters were taken.")]
    [InlineData("9 $INSUNITS | 70 0 | 9 $MEASUREMENT | 70 0", "0 0, 5080 0, 5080 2540, 0 2540", "The drawing says its units only by $MEASUREMENT; inches were taken.")]
    public void Without_that_text_the_header_says_the_units(string header, string outline, string note)
    {
        string pairs = Drawings.TestCard.Replace("UNITS: METRIC", "AUTHOR: NOBODY", StringComparison.Ordinal).Replace("9 $ACADVER | 1 AC1009", header, StringComparison.Ordinal);
        (DrawnPiece? card, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(pairs), "TESTCARD", "2", OutlineMeaning.CuttingLine);
        Assert.Equal(outline, Drawings.Text(card!));
        Assert.Equal(note, string.Concat(problems.Select(problem => problem.What)));
    }

    [Fact]
    public void Without_units_the_reader_stops_and_asks()
    {
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(Drawings.TestCard.Replace("UNITS: METRIC", "AUTHOR: NOBODY", StringComparison.Ordinal)));
        Assert.Equal(
            "d.dxf: The drawing does not say its units: it has no UNITS text, no $INSUNITS and no $MEASUREMENT. "
            + "Say it in the job, as drawings: { d.dxf: { unit: mm } } (or cm, m, in, ft). Measure a piece that you know: guessing is not safe, a slip is 25.4, 10 or 2.54 times.",
            Drawings.OnlyProblem(problems));
    }

    [Fact]
    public void A_text_and_a_header_that_differ_are_noted()
    {
        byte[] bytes = Drawings.Bytes(Drawings.TestCard.Replace("9 $ACADVER | 1 AC1009", "9 $INSUNITS | 70 1", StringComparison.Ordinal));
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(bytes);
        Assert.Contains("UNITS: METRIC, but its header says 25.4 mm a unit; the text was taken.", Drawings.OnlyProblem(problems), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ASTM D6673-04", "ASTM D6673")]
    [InlineData("ANSI/AAMA VERSION: 1.0", "ANSI/AAMA-292")]
    [InlineData("AUTHOR: NOBODY", "")]
    public void Both_dialects_are_read_and_told_apart(string line, string dialect)
    {
        (Nestmark.Input.Dxf.DxfDrawing? drawing, _) = Drawings.Load(Drawings.Bytes(Drawings.TestCard.Replace("STYLE NAME: DEMO", line, StringComparison.Ordinal)));
        Assert.Equal(dialect, drawing!.Dialect);
        Assert.Equal(["TESTCARD"], drawing.Names);
        Assert.Equal(["M"], drawing.SizesOf("TESTCARD"));
    }

    [Fact]
    public void Every_kind_of_notch_is_read()
    {
        DrawnPiece piece = Drawings.Piece(Drawings.Bytes(Drawings.Pattern(
            "0 POINT | 8 4 | 10 20 | 20 0 | 0 POINT | 8 80 | 10 40 | 20 0 | 0 POINT | 8 81 | 10 60 | 20 0 | 0 POINT | 8 82 | 10 80 | 20 0 | 0 POINT | 8 83 | 10 99 | 20 1 | 0 LINE | 8 4 | 10 120 | 20 6 | 11 120 | 21 0")), "P");
        Assert.Equal(
            " 20 0, T 40 0, castle 60 0, check 80 0, U 99 0,  120 0",
            string.Join(", ", piece.Notches.Select(notch => notch.Label + " " + Drawings.Text(notch.Place))));
    }

    [Fact]
    public void Lines_drawn_and_not_cut_are_kept_with_what_they_are()
    {
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(Drawings.Pattern(
            "0 LINE | 8 8 | 10 20 | 20 20 | 11 40 | 21 20 | 0 LINE | 8 9 | 10 20 | 20 30 | 11 40 | 21 30 | 0 LINE | 8 10 | 10 20 | 20 40 | 11 40 | 21 40 "
            + "| 0 CIRCLE | 8 11 | 10 100 | 20 50 | 40 5 | 0 LINE | 8 14 | 10 10 | 20 10 | 11 190 | 21 10 | 0 TEXT | 8 15 | 10 50 | 20 50 | 1 PRESS WELL")), "P", "1", OutlineMeaning.CuttingLine);
        Assert.Equal(["", "stripe line", "plaid line", "cutout", "sew line"], piece!.Lines.Select(line => line.Label));
        Assert.Equal(["annotation PRESS WELL", "sew line"], piece.Said.ToArray());
        Assert.Equal("1 cutout is drawn on the piece and not cut.", Assert.Single(problems).What);
    }

    [Fact]
    public void What_is_not_read_is_counted_by_layer()
    {
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(Drawings.Pattern(
            "0 LINE | 8 5 | 10 0 | 20 0 | 11 9 | 21 9 | 0 LINE | 8 84 | 10 0 | 20 0 | 11 9 | 21 9 | 0 POINT | 8 SCRAP | 10 1 | 20 1 | 0 TEXT | 8 2 | 10 0 | 20 0 | 1 # 12 | 0 HATCH | 8 1")));
        Assert.Equal(
            "Not read: 1 HATCH, 1 LINE on layer 5 (grade reference), 1 LINE on layer 84 (copy for checking), 1 POINT on layer SCRAP.",
            problems[^1].What);
    }

    // Grade rule tables: references/formats.md 1.6, from memory, to be checked against the standard; so nothing is graded and it is said why.
    [Fact]
    public void Grade_rules_are_told_and_not_guessed()
    {
        string marks = "0 POINT | 8 2 | 10 0 | 20 0 | 0 TEXT | 8 2 | 10 0 | 20 0 | 1 # 12 | 0 TEXT | 8 3 | 10 9 | 20 0 | 1 #3";
        string file = Drawings.Pattern(marks).Replace("1 UNITS: METRIC", "1 UNITS: METRIC | 0 TEXT | 8 1 | 10 0 | 20 0 | 1 GRADE RULE TABLE: COAT", StringComparison.Ordinal);
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(file));
        Problem note = Assert.Single(problems);
        Assert.StartsWith("The drawing has 2 numbers of grade rules and names the grade rule table COAT. Sizes are not made from it", note.What, StringComparison.Ordinal);
        Assert.EndsWith("into the job under grade.", note.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void The_boundary_is_the_cutting_line_unless_the_job_says_otherwise()
    {
        byte[] bytes = Drawings.Bytes(Drawings.Pattern(SewLine));
        (DrawnPiece? unsaid, IReadOnlyList<Problem> problems) = Drawings.Try(bytes, "P");
        Assert.Equal((OutlineMeaning.CuttingLine, "0 0, 200 0, 200 100, 0 100"), (unsaid!.Meaning!.Value, Drawings.Text(unsaid)));
        Assert.StartsWith("The outline is the cutting line, as pattern files draw it;", Assert.Single(problems).What, StringComparison.Ordinal);
        DrawnPiece seam = Drawings.Piece(bytes, "P", "1", OutlineMeaning.SeamLine);
        Assert.Equal((OutlineMeaning.SeamLine, "10 10, 190 10, 190 90, 10 90"), (seam.Meaning!.Value, Drawings.Text(seam)));
        Assert.Empty(seam.Lines);
    }

    [Fact]
    public void Without_a_sew_line_the_boundary_can_be_the_seam_line_and_a_note_says_so()
    {
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(Drawings.Pattern("")), "P", "1", OutlineMeaning.SeamLine);
        Assert.Equal(OutlineMeaning.SeamLine, piece!.Meaning);
        Assert.StartsWith("The piece has no closed sew line (layer 14), so its boundary was taken", Assert.Single(problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_half_piece_lies_on_the_fold_or_is_opened_out_as_the_job_cuts_it()
    {
        byte[] bytes = Drawings.Bytes(Drawings.Pattern("0 LINE | 8 6 | 10 -20 | 20 0 | 11 220 | 21 0 | 0 POINT | 8 4 | 10 200 | 20 30 | 0 POINT | 8 13 | 10 50 | 20 40 | 0 POINT | 8 13 | 10 60 | 20 0"));
        DrawnPiece folded = Drawings.Piece(bytes, "P", "1 on fold");
        Assert.Equal(new Segment(Point.FromMillimeters(0, 0), Point.FromMillimeters(200, 0)), folded.FoldLine);
        Assert.Equal(4, folded.Outline.Length);
        DrawnPiece whole = Drawings.Piece(bytes, "P", "1");
        Assert.Null(whole.FoldLine);
        Assert.Equal("200 0, 200 100, 0 100, 0 0, 0 -100, 200 -100", Drawings.Text(whole));
        Assert.Equal(["200 30", "200 -30"], whole.Notches.Select(notch => Drawings.Text(notch.Place)));
        Assert.Equal(["50 40", "50 -40", "60 0"], whole.Marks.Select(mark => Drawings.Text(mark.Place)));
    }

    [Fact]
    public void A_piece_drawn_whole_cannot_be_cut_on_the_fold()
    {
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(
            Drawings.Bytes(Drawings.Pattern("0 LINE | 8 6 | 10 0 | 20 50 | 11 200 | 21 50")), "P", "1 on fold", OutlineMeaning.CuttingLine);
        Assert.Null(piece);
        Assert.Equal("The piece is cut on the fold, but the drawing holds both its halves.", Assert.Single(problems).What);
    }

    [Fact]
    public void Where_only_curve_points_are_given_a_smooth_curve_runs_through_them()
    {
        // Seven points of a circle of radius 100 about the origin, between turn points at its ends; formats.md 1.2: the curve passes through all of them.
        string vertices = string.Join(" | ", Enumerable.Range(0, 7).Select(i => FormattableString.Invariant($"0 VERTEX | 8 1 | 10 {OnCircle(i).X:0.0000} | 20 {OnCircle(i).Y:0.0000}")));
        string points = string.Join(" | ", Enumerable.Range(1, 5).Select(i => FormattableString.Invariant($"0 POINT | 8 3 | 10 {OnCircle(i).X:0.0000} | 20 {OnCircle(i).Y:0.0000}")));
        string outline = $"0 POLYLINE | 8 1 | 70 1 | {vertices} | 0 SEQEND";
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(
            Drawings.Bytes(Drawings.Pattern($"0 POINT | 8 2 | 10 100 | 20 0 | 0 POINT | 8 2 | 10 -100 | 20 0 | {points}", outline)), "P", "1", OutlineMeaning.CuttingLine);
        Assert.Contains("A smooth curve was laid through 1 run of curve points", Assert.Single(problems).What, StringComparison.Ordinal);
        Assert.Equal(2, piece!.Outline.Count(vertex => vertex.Kind == VertexKind.Marked));
        Assert.All(Enumerable.Range(0, 7), i => Assert.True(
            OutlineDistance.Nearest(piece.Outline, Point.FromMillimeters(OnCircle(i).X, OnCircle(i).Y)).Distance.TotalMillimeters <= 0.05));
        // Straight chords between the points lie up to 100(1 - cos 15°) = 3.4 mm inside the circle; the smooth curve, free at its ends, stays within 1.5 mm of it.
        Assert.All(piece.Outline.Where(vertex => vertex.Point.Y > 1_000), vertex => Assert.InRange(vertex.Point.NormMicrometers, 98_500, 101_500));
        Assert.True(piece.Outline.Length > 20);
    }

    [Fact]
    public void Vertices_between_curve_points_are_the_curve_already()
    {
        string outline = "0 POLYLINE | 8 1 | 70 1 | 0 VERTEX | 8 1 | 10 0 | 20 0 | 0 VERTEX | 8 1 | 10 200 | 20 0 | 0 VERTEX | 8 1 | 10 150 | 20 80 | 0 VERTEX | 8 1 | 10 100 | 20 100 | 0 VERTEX | 8 1 | 10 50 | 20 80 | 0 SEQEND";
        DrawnPiece piece = Drawings.Piece(Drawings.Bytes(Drawings.Pattern("0 POINT | 8 2 | 10 0 | 20 0 | 0 POINT | 8 2 | 10 200 | 20 0 | 0 POINT | 8 3 | 10 100 | 20 100", outline)), "P");
        Assert.Equal("0 0, 200 0, 150 80, 100 100, 50 80", Drawings.Text(piece));
        Assert.Equal([VertexKind.Marked, VertexKind.Marked, VertexKind.Curve, VertexKind.Curve, VertexKind.Curve], piece.Outline.Select(vertex => vertex.Kind));
    }

    [Fact]
    public void A_boundary_in_pieces_is_joined_and_small_gaps_are_noted()
    {
        string outline = "0 LINE | 8 1 | 10 0 | 20 0 | 11 200 | 21 0 | 0 LINE | 8 1 | 10 0 | 20 100 | 11 0 | 21 0.05 | 0 POLYLINE | 8 1 | 70 0 | 0 VERTEX | 10 200 | 20 0 | 0 VERTEX | 10 200 | 20 100 | 0 VERTEX | 10 1 | 20 100 | 0 SEQEND";
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(Drawings.Pattern("", outline)), "P", "1", OutlineMeaning.CuttingLine);
        Assert.Equal("0 0, 200 0, 200 100, 0 100", Drawings.Text(piece!));
        Assert.Equal("The outline had a gap of 1 mm at 1.0, 100.0 mm from the drawing's origin; it was closed with a straight line.", Assert.Single(problems).What);
    }

    [Fact]
    public void An_open_boundary_is_refused()
    {
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(
            Drawings.Bytes(Drawings.Pattern("", "0 LINE | 8 1 | 10 0 | 20 0 | 11 200 | 21 0 | 0 LINE | 8 1 | 10 200 | 20 0 | 11 200 | 21 100")), "P", "1", OutlineMeaning.CuttingLine);
        Assert.Null(piece);
        Assert.StartsWith("The outline is open: a gap of 223.61 mm at 200.0, 100.0", Assert.Single(problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_block_that_is_never_shown_is_read_with_a_note()
    {
        string pairs = Drawings.TestCard.Replace("0 INSERT | 8 1 | 2 TESTCARD_M | 10 0.0 | 20 0.0", "", StringComparison.Ordinal);
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(pairs), "TESTCARD", "2", OutlineMeaning.CuttingLine);
        Assert.NotNull(piece);
        Assert.Equal("The piece TESTCARD is in a block that the drawing never shows.", Assert.Single(problems).What);
    }

    [Fact]
    public void Another_quantity_than_the_job_cuts_is_noted()
    {
        (_, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(Drawings.TestCard), "TESTCARD", "2 pairs", OutlineMeaning.CuttingLine);
        Assert.Equal("The drawing asks for a quantity of 2, the job cuts 2 pairs.", Assert.Single(problems).What);
        (_, problems) = Drawings.Try(Drawings.Bytes(Drawings.TestCard.Replace("QUANTITY: 2", "QUANTITY: 1,1", StringComparison.Ordinal)), "TESTCARD", "1 pair", OutlineMeaning.CuttingLine);
        Assert.Empty(problems);
    }

    [Fact]
    public void Names_that_a_drawing_does_not_hold_are_answered_with_those_it_holds()
    {
        (_, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(Drawings.TestCard), "TESTCART");
        Assert.Equal("job.yaml:1:1: The drawing has no piece TESTCART. Did you mean TESTCARD? There are: TESTCARD.", Drawings.OnlyProblem(problems));
        Assert.NotNull(Drawings.Piece(Drawings.Bytes(Drawings.TestCard), "TESTCARD-M"));
        Assert.NotNull(Drawings.Piece(Drawings.Bytes(Drawings.TestCard), "TESTCARD_M"));
    }

    private const string SewLine = "0 POLYLINE | 8 14 | 70 1 | 0 VERTEX | 10 10 | 20 10 | 0 VERTEX | 10 190 | 20 10 | 0 VERTEX | 10 190 | 20 90 | 0 VERTEX | 10 10 | 20 90 | 0 SEQEND";

    private static (double X, double Y) OnCircle(int step) => (100 * Angle.Cos(step * Math.PI / 6), 100 * Angle.Sin(step * Math.PI / 6));
}
