using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Input.Dxf;
using Nestmark.Input.Outlines;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input.Dxf;

/// <summary>Plain drawings. <c>fixtures/dxf/shapes.dxf</c> and the points on its outlines were written and evaluated by ezdxf 0.18.1 (make-shapes.py).</summary>
public sealed class PlainDxfTests
{
    private static readonly byte[] Shapes = File.ReadAllBytes(Fixtures.PathOf("dxf/shapes.dxf"));

    private static readonly Dictionary<string, List<Point>> Evaluated = File.ReadLines(Fixtures.PathOf("dxf/shapes.points.txt"))
        .Where(line => line[0] != '#').Select(line => line.Split(' '))
        .GroupBy(words => words[0], words => Point.FromMillimeters(Number(words[1]), Number(words[2])))
        .ToDictionary(group => group.Key, group => group.ToList());

    [Theory]
    [InlineData("pocket")]
    [InlineData("flap")]
    [InlineData("yoke")]
    [InlineData("tab")]
    [InlineData("badge")]
    [InlineData("disc")]
    [InlineData("arch")]
    [InlineData("crest")]
    [InlineData("slot")]
    [InlineData("CUFF")]
    [InlineData("CUFF-2")]
    [InlineData("button")]
    public void Outlines_run_within_a_twentieth_of_a_millimeter_of_the_points_that_another_library_evaluates(string name)
    {
        DrawnPiece piece = Drawings.Piece(Shapes, name);
        double farthest = Evaluated[name].Max(point => OutlineDistance.Nearest(piece.Outline, point).Distance.TotalMillimeters);
        Assert.InRange(farthest, 0, 0.051);
    }

    [Fact]
    public void Every_vertex_lies_near_an_evaluated_point_or_on_a_straight_side()
    {
        // The other direction, on outlines that are evaluated all around: no vertex strays from the curve.
        foreach (string name in new[] { "yoke", "badge", "disc", "button" })
        {
            List<Point> around = Evaluated[name];
            DrawnPiece piece = Drawings.Piece(Shapes, name);
            foreach (OutlineVertex vertex in piece.Outline)
            {
                double distance = Enumerable.Range(0, around.Count).Min(i =>
                    (PointLocation.NearestOnSegment(around[i], around[(i + 1) % around.Count], vertex.Point) - vertex.Point).NormMicrometers);
                Assert.InRange(distance, 0, 120);
            }
        }
    }

    [Fact]
    public void What_a_drawing_holds_beside_its_pieces_is_counted()
    {
        (DxfDrawing? drawing, IReadOnlyList<Problem> problems) = Drawings.Load(Shapes);
        Assert.Equal(["pocket", "flap", "yoke", "tab", "badge", "disc", "arch", "crest", "slot", "CUFF", "CUFF-2", "button"], drawing!.Names);
        Assert.Equal("Not read: 1 HATCH, 1 TEXT outside of outlines.", Assert.Single(problems).What);
    }

    [Theory]
    [InlineData("0 LWPOLYLINE | 8 0 | 90 4 | 70 1 | 10 0 | 20 0 | 10 50 | 20 0 | 10 50 | 20 30 | 10 0 | 20 30", "0 0, 50 0, 50 30, 0 30")]
    [InlineData("0 LINE | 8 0 | 10 0 | 20 0 | 11 50 | 21 0 | 0 LINE | 8 0 | 10 50 | 20 30 | 11 50 | 21 0 | 0 LINE | 8 0 | 10 50 | 20 30 | 11 0 | 21 0", "0 0, 50 0, 50 30")]
    [InlineData("0 SPLINE | 8 0 | 70 1 | 71 1 | 40 0 | 40 0 | 40 1 | 40 2 | 40 3 | 40 3 | 10 0 | 20 0 | 10 50 | 20 0 | 10 50 | 20 30 | 10 0 | 20 0", "0 0, 50 0, 50 30")]
    [InlineData("0 LWPOLYLINE | 8 0 | 90 3 | 70 1 | 210 0 | 220 0 | 230 -1 | 10 0 | 20 0 | 10 50 | 20 0 | 10 50 | 20 30", "0 0, -50 0, -50 30")]
    public void Straight_shapes_come_out_exactly(string entities, string outline) =>
        Assert.Equal(outline, Drawings.Text(Drawings.Piece(Drawings.Bytes(Drawings.Plain(entities)), "piece")));

    [Fact]
    public void Bulge_1_is_a_half_circle_to_the_right_of_its_chord()
    {
        // formats.md 2.5: bulge = tan(angle/4), positive bows to the right. A bulge of 1 over a chord of 100 is a half circle of radius 50.
        DrawnPiece piece = Drawings.Piece(Drawings.Bytes(Drawings.Plain("0 LWPOLYLINE | 8 0 | 90 2 | 70 1 | 10 0 | 20 0 | 42 1 | 10 100 | 20 0")), "piece");
        Box box = Box.Around([.. piece.Outline.Select(vertex => vertex.Point)]);
        Assert.Equal((0, 0), (box.MinX, box.MaxY));
        Assert.InRange(box.MinY, -50_050, -50_000);
        double area = Math.Abs((double)Polygon.TwiceSignedArea([.. piece.Outline.Select(vertex => vertex.Point)])) / 2e6;
        Assert.InRange(area, Math.PI * 2500 / 2, Math.PI * 2500 / 2 + 0.05 * Math.PI * 50);
    }

    [Fact]
    public void A_nearly_straight_arc_keeps_its_height()
    {
        // Bulge 0.001 over 2000 mm: the arc is 1 mm high and its center 500 m away.
        DrawnPiece piece = Drawings.Piece(Drawings.Bytes(Drawings.Plain("0 LWPOLYLINE | 8 0 | 90 3 | 70 1 | 10 0 | 20 0 | 42 0.001 | 10 2000 | 20 0 | 10 2000 | 20 500")), "piece");
        Assert.InRange(piece.Outline.Min(vertex => vertex.Point.YMillimeters), -1.05, -1);
    }

    [Fact]
    public void Names_come_from_the_block_the_tallest_text_inside_or_the_layer()
    {
        string square(int x, string layer) => FormattableString.Invariant($"0 LWPOLYLINE | 8 {layer} | 90 4 | 70 1 | 10 {x} | 20 0 | 10 {x + 50} | 20 0 | 10 {x + 50} | 20 50 | 10 {x} | 20 50");
        string entities = square(0, "0") + " | 0 TEXT | 8 0 | 10 9 | 20 9 | 40 3 | 1 cut 2 | 0 TEXT | 8 0 | 10 9 | 20 30 | 40 9 | 1 Collar stand | "
            + square(100, "UNDER COLLAR") + " | " + square(200, "0") + " | 0 INSERT | 8 0 | 2 BAND | 10 300 | 20 0 | " + square(500, "0");
        string band = "0 BLOCK | 8 0 | 2 BAND | 70 0 | 10 0 | 20 0 | " + square(0, "0") + " | 0 ENDBLK";
        (DxfDrawing? drawing, _) = Drawings.Load(Drawings.Bytes(Drawings.Plain(entities, band)));
        Assert.Equal(["BAND", "Collar stand", "UNDER COLLAR", "piece", "piece-2"], drawing!.Names.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Layers_say_what_a_line_is_as_classes_do_in_SVG()
    {
        string entities = "0 LWPOLYLINE | 8 outline | 90 4 | 70 1 | 10 0 | 20 0 | 10 200 | 20 0 | 10 200 | 20 100 | 10 0 | 20 100 | 0 LINE | 8 grain | 10 20 | 20 50 | 11 180 | 21 50 "
            + "| 0 LINE | 8 Fold | 10 0 | 20 0 | 11 200 | 21 0 | 0 LINE | 8 notch | 10 200 | 20 40 | 11 190 | 21 40 | 0 CIRCLE | 8 mark-button | 10 60 | 20 60 | 40 4 | 0 LINE | 8 0 | 10 20 | 20 20 | 11 30 | 21 20 "
            + "| 0 POINT | 8 corner | 10 200 | 20 100";
        DrawnPiece piece = Drawings.Piece(Drawings.Bytes(Drawings.Plain(entities)), "outline", "1 on fold");
        Assert.Equal("20 50 180 50", Drawings.Text(piece.Grainline!.Start) + " " + Drawings.Text(piece.Grainline.End));
        Assert.Equal("0 0 200 0", Drawings.Text(piece.FoldLine!.Start) + " " + Drawings.Text(piece.FoldLine.End));
        Assert.Equal("200 40", Drawings.Text(Assert.Single(piece.Notches).Place));
        Assert.Equal("60 60", Drawings.Text(Assert.Single(piece.Marks).Place));
        Assert.Single(piece.Lines);
        Assert.Null(piece.Meaning);
        Assert.Contains(piece.Outline, vertex => vertex.Kind == VertexKind.Marked && Drawings.Text(vertex.Point) == "200 100");
    }

    [Fact]
    public void Closed_lines_inside_a_piece_are_drawn_on_it()
    {
        DrawnPiece piece = Drawings.Piece(Drawings.Bytes(Drawings.Plain("0 CIRCLE | 8 0 | 10 0 | 20 0 | 40 50 | 0 CIRCLE | 8 0 | 10 0 | 20 0 | 40 5 | 0 CIRCLE | 8 0 | 10 0 | 20 0 | 40 50")), "piece");
        Assert.Equal(100, Box.Around([.. piece.Outline.Select(vertex => vertex.Point)]).Width / 1000.0, 0.11);
        Assert.Single(piece.Lines);
    }

    [Fact]
    public void A_spline_of_fit_points_alone_runs_through_them_and_is_noted()
    {
        string fits = string.Join(" | ", new[] { (0, 0), (60, 20), (100, 0), (120, 60), (50, 90), (0, 0) }.Select(at => FormattableString.Invariant($"11 {at.Item1} | 21 {at.Item2} | 31 0")));
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Drawings.Try(Drawings.Bytes(Drawings.Plain($"0 SPLINE | 8 0 | 70 0 | 71 3 | 74 6 | {fits}")), "piece");
        Assert.Contains(" has only 6 fit points; a smooth curve was laid through them", Assert.Single(problems).What, StringComparison.Ordinal);
        Assert.All(new[] { (60, 20), (120, 60), (50, 90) }, at => Assert.True(OutlineDistance.Nearest(piece!.Outline, Point.FromMillimeters(at.Item1, at.Item2)).Distance.TotalMillimeters < 0.051));
    }

    [Fact]
    public void Rows_and_columns_of_blocks_are_pieces_each()
    {
        string block = "0 BLOCK | 8 0 | 2 TIE | 70 0 | 10 5 | 20 0 | 0 LWPOLYLINE | 8 0 | 90 3 | 70 1 | 10 5 | 20 0 | 10 25 | 20 0 | 10 25 | 20 10 | 0 ENDBLK";
        (DxfDrawing? drawing, _) = Drawings.Load(Drawings.Bytes(Drawings.Plain("0 INSERT | 8 0 | 2 TIE | 10 0 | 20 0 | 70 3 | 71 2 | 44 40 | 45 30 | 50 90", block)));
        Assert.Equal(6, drawing!.Names.Count);
        Assert.Contains("0 0, 0 20, -10 20", drawing.Names.Select(name => Drawings.Text(Drawings.Piece(
            Drawings.Bytes(Drawings.Plain("0 INSERT | 8 0 | 2 TIE | 10 0 | 20 0 | 70 3 | 71 2 | 44 40 | 45 30 | 50 90", block)), name))));
    }

    private static double Number(string word) => double.Parse(word, CultureInfo.InvariantCulture);
}
