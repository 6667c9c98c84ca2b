using System.Text;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>Groups as pieces: one outline, and lines and marks by class, data-role or id.</summary>
public sealed class SvgPieceTests
{
    private const string Outline = """<path class="outline" d="M 50 50 H 250 V 200 H 50 Z"/>""";

    [Theory]
    [InlineData("class=\"thin notch\"", "")]
    [InlineData("data-role=\"notch\"", "")]
    [InlineData("id=\"notch-1\"", "")]
    [InlineData("", "class=\"notch\"")]
    public void Role_comes_from_class_data_role_id_or_the_group_around(string own, string around)
    {
        Piece piece = Read($"{Outline}<g {around}><line {own} x1=\"100\" y1=\"56\" x2=\"100\" y2=\"50\"><title>side</title></line></g>");
        Notch notch = Assert.Single(piece.Notches);
        Assert.Equal(("side", new Point(50_000, 150_000)), (notch.Name, notch.OnSeamLine));
    }

    [Fact]
    public void Lines_and_marks_come_along_with_their_titles()
    {
        Piece piece = Read(Outline + """
            <path class="line" d="M 60 60 H 90 V 100"><title>pocket</title></path>
            <circle class="mark" cx="150" cy="125" r="2"><title>button</title></circle>
            """);
        Assert.Equal(("pocket", 3), (piece.Lines[0].Label, piece.Lines[0].Points.Length));
        Assert.Equal(new PieceMark("button", new Point(100_000, 75_000)), piece.Marks[0]);
    }

    [Fact]
    public void Grainline_turns_the_piece()
    {
        Piece piece = Read(Outline + """<line class="grain" x1="100" y1="60" x2="100" y2="190"/>""");
        Assert.Equal((150_000, 200_000), (piece.CuttingLine.Bounds.Width, piece.CuttingLine.Bounds.Height));
    }

    [Fact]
    public void Fold_line_becomes_the_fold_edge()
    {
        Piece piece = Jobs.Good(Jobs.ReadDrawing(Svg(Outline + """<line class="fold" x1="50" y1="50" x2="50" y2="200"/>"""), "1 on fold")).Pieces[0].Piece;
        Assert.Equal(150_000, piece.FoldEdge!.Start.DistanceTo(piece.FoldEdge.End).Micrometers);
    }

    [Fact]
    public void Marked_corner_is_lettered_however_slight_its_turn()
    {
        Piece piece = Read(Outline + """<circle class="corner" cx="150" cy="200.3" r="1"/>""");
        Assert.Equal(5, piece.Corners.Length);
        Assert.Contains(piece.Corners, corner => corner.Place == new Point(100_000, 0));
    }

    [Theory]
    [InlineData("""<line class="notch" x1="100" y1="90" x2="100" y2="80"/>""", "A notch lies more than 3 mm from the outline.")]
    [InlineData("""<line class="fold" x1="50" y1="50" x2="50" y2="200"/>""", "A fold edge is given, but the piece is not cut on the fold.")]
    public void Faults_of_what_is_drawn_name_the_drawing_and_its_line(string drawn, string what)
    {
        JobReading reading = Jobs.ReadDrawing("<!-- two lines\nof remarks -->\n" + Svg(Outline + drawn));
        Assert.Equal("front (drawing.svg:3): " + what, Jobs.OnlyProblem(reading).What);
        Assert.Equal("pieces.front.outline", Jobs.OnlyProblem(reading).Where.Item);
    }

    [Fact]
    public void Faults_of_a_key_in_the_job_file_do_not_name_the_drawing()
    {
        Problem problem = Jobs.ReadDrawing(Svg(Outline), "1 pair, edges: { A-C: 2 }").Problems[0];
        Assert.Equal("front: There is no edge A-C.", problem.What);
        Assert.Equal("pieces.front.edges", problem.Where.Item);
    }

    [Fact]
    public void Loose_strokes_are_joined_head_to_tail_either_way_round()
    {
        Piece piece = Read("""
            <g class="outline"><path d="M 50 50 H 250"/><path d="M 50 200 V 50"/><path d="M 250 50 V 200"/><path d="M 50 200 H 250"/></g>
            """);
        Assert.Equal(30_000, piece.CuttingLine.AreaSquareMillimeters, 6);
    }

    [Fact]
    public void Clockwise_and_counter_clockwise_outlines_give_the_same_piece()
    {
        Piece one = Read("""<path d="M 50 50 H 250 V 200 L 50 190 Z"/>""");
        Piece other = Read("""<path d="M 50 50 L 50 190 L 250 200 V 50 Z"/>""");
        Assert.Equal(one.CuttingLine.Outer.Order(), other.CuttingLine.Outer.Order());
    }

    [Fact]
    public void Hidden_shapes_and_shapes_that_only_serve_others_are_passed_over() => Assert.Equal(
        30_000,
        Read("""
            <g style="fill:red; display: none"><rect x="5" y="5" width="20" height="20"/></g>
            <clipPath><rect width="9" height="9"/></clipPath><defs><rect width="9" height="9"/></defs><text>front</text>
            <path d="M 50 50 H 250 V 200 H 50 Z"/>
            """).CuttingLine.AreaSquareMillimeters,
        6);

    [Fact]
    public void Tiny_gap_is_closed_without_a_word()
    {
        JobReading reading = Jobs.ReadDrawing(Svg("""<path d="M 50 50 H 250 V 200 H 50 V 50.08"/>"""));
        Assert.Empty(reading.Problems);
        Assert.Equal(30_000, Jobs.Good(reading).Pieces[0].Piece.CuttingLine.AreaSquareMillimeters, 1.0);
    }

    // Two piece-sized arcs: area of an ellipse is π·a·b.
    [Fact]
    public void Ellipse_of_two_arcs_has_its_area()
    {
        Piece piece = Read("""<path d="M 50 100 A 80 40 0 0 1 210 100 A 80 40 0 0 1 50 100 Z"/>""");
        Assert.Equal(Math.PI * 80 * 40, piece.CuttingLine.AreaSquareMillimeters, 0.05 * 400);
        Assert.True(piece.CuttingLine.AreaSquareMillimeters >= Math.PI * 80 * 40 - 0.5);
    }

    [Fact]
    public void Fifty_thousand_points_are_thinned_with_a_note()
    {
        StringBuilder points = new();
        for (int i = 0; i < 50_000; i++)
        {
            double radians = i * 2 * Math.PI / 50_000;
            points.Append(System.Globalization.CultureInfo.InvariantCulture, $"{200 + 90 * Angle.Cos(radians):0.0000},{150 + 90 * Angle.Sin(radians):0.0000} ");
        }
        JobReading reading = Jobs.ReadDrawing(Svg($"<polygon points=\"{points}\"/>"));
        Assert.Contains("thinned to", Jobs.OnlyProblem(reading).What, StringComparison.Ordinal);
        Assert.Equal(Math.PI * 8100, Jobs.Good(reading).Pieces[0].Piece.CuttingLine.AreaSquareMillimeters, 0.02 * 2 * Math.PI * 90);
    }

    [Fact]
    public void Thirty_thousand_teeth_that_cannot_be_thinned_are_refused()
    {
        StringBuilder points = new();
        for (int i = 0; i < 30_000; i++)
        {
            double radians = i * 2 * Math.PI / 30_000;
            points.Append(System.Globalization.CultureInfo.InvariantCulture, $"{200 + (90 + i % 2) * Angle.Cos(radians):0.0000},{150 + (90 + i % 2) * Angle.Sin(radians):0.0000} ");
        }
        Problem problem = Jobs.OnlyProblem(Jobs.ReadDrawing(Svg($"<polygon points=\"{points}\"/>")));
        Assert.Equal("The outline has 30000 points; at most 200000 are read, and at most 20000 may be left after thinning.", problem.What);
    }

    [Fact]
    public void Drawing_with_the_public_DOCTYPE_is_read() => Assert.NotNull(Jobs.Good(Jobs.ReadDrawing(
        "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n" + Svg(Outline))));

    [Fact]
    public void Drawing_whose_namespace_is_an_entity_is_read() => Assert.NotNull(Jobs.Good(Jobs.ReadDrawing(
        "<!DOCTYPE svg [<!ENTITY ns \"http://www.w3.org/2000/svg\">]>\n" + Svg(Outline).Replace("http://www.w3.org/2000/svg", "&ns;", StringComparison.Ordinal))));

    [Fact]
    public void Copies_without_end_are_stopped()
    {
        StringBuilder body = new("<rect id=\"c0\" width=\"9\" height=\"9\"/>");
        for (int level = 1; level <= 12; level++)
            body.Append(System.Globalization.CultureInfo.InvariantCulture, $"<g id=\"c{level}\">").Insert(body.Length, $"<use href=\"#c{level - 1}\"/>", 10).Append("</g>");
        JobReading reading = Jobs.ReadDrawing(Svg(body + "<use href=\"#c12\"/>"));
        Assert.Contains("100,000 elements", Jobs.OnlyProblem(reading).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Outlines_that_nobody_names_may_be_broken() => Assert.NotNull(Jobs.Good(Jobs.ReadDrawing(
        Svg(Outline).Replace("</svg>", "<path id=\"sketch\" d=\"M 1 x\"/></svg>", StringComparison.Ordinal))));

    private static string Svg(string body) =>
        $"""<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300"><g id="front">{body}</g></svg>""";

    private static Piece Read(string body) => Jobs.Good(Jobs.ReadDrawing(Svg(body))).Pieces[0].Piece;
}
