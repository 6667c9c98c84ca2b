using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Input;

/// <summary>
/// A drawing comes out at its true size. Formulas: SVG 2, Coordinate Systems (viewBox to element transform) and CSS Values
/// (1 in = 96 px = 72 pt = 6 pc = 25.4 mm, 1 Q = 1/40 cm), as in references/formats.md 3.1.
/// </summary>
public sealed class SvgTrueSizeTests
{
    [Theory]
    [InlineData("400mm", "300mm", "0 0 400 300", 100.0, 50.0)]
    [InlineData("40cm", "30cm", "0 0 400 300", 100.0, 50.0)]
    [InlineData("10in", "5in", "0 0 1000 500", 25.4, 12.7)]
    [InlineData("720pt", "360pt", "0 0 1000 500", 25.4, 12.7)]
    [InlineData("60pc", "30pc", "0 0 1000 500", 25.4, 12.7)]
    [InlineData("1600Q", "1200Q", "0 0 400 300", 100.0, 50.0)]
    [InlineData("210mm", "297mm", "0 0 793.7007874 1122.519685", 26.4583333, 13.2291667)] // a page in CSS pixels: 100 px = 26.4583 mm
    [InlineData("400mm", "300mm", "-50 -50 800 600", 50.0, 25.0)]
    public void Units_and_viewBox_give_the_size(string width, string height, string viewBox, double alongX, double alongY)
    {
        string svg = $"""<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" viewBox="{viewBox}"><rect id="front" x="10" y="20" width="100" height="50"/></svg>""";
        CheckSize(svg, alongX, alongY);
    }

    // "meet" takes the smaller scale of the two: min(400/200, 300/300) = 1.
    [Fact]
    public void Unequal_shapes_of_page_and_viewBox_keep_the_drawing_in_proportion() => CheckSize(
        """<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 200 300"><rect id="front" width="100" height="50"/></svg>""", 100, 50);

    [Theory]
    [InlineData("translate(30 7) scale(2)", "", 200, 100)]
    [InlineData("scale(2)", "scale(0.5 2)", 100, 200)]
    [InlineData("rotate(90)", "", 50, 100)]
    [InlineData("rotate(90 13 17)", "rotate(-90)", 100, 50)]
    [InlineData("matrix(0 2 -2 0 5 5)", "", 100, 200)]
    [InlineData("translate(5) , rotate(180)", "matrix(1,0,0,1,0,0)", 100, 50)]
    [InlineData("skewX(45)", "", 150, 50)] // 100 + 50 tan 45°
    [InlineData("skewY(45)", "", 100, 150)]
    [InlineData("scale(-1 1)", "", 100, 50)]
    public void Nested_transforms_multiply(string outer, string inner, double alongX, double alongY) => CheckSize(
        $"""<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300"><g transform="{outer}"><g id="front" transform="{inner}"><rect width="100" height="50"/></g></g></svg>""",
        alongX, alongY);

    [Theory]
    [InlineData("""<use id="front" href="#shape" x="40" y="9"/>""", 100, 50)]
    [InlineData("""<use id="front" xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="#shape" transform="scale(3)"/>""", 300, 150)]
    [InlineData("""<g id="front"><use href="#symbol" width="20" height="20"/></g>""", 10, 5)] // viewBox 200 into 20
    [InlineData("""<svg x="3" y="4" width="50" height="50" viewBox="0 0 100 100"><use id="front" href="#shape"/></svg>""", 50, 25)]
    public void Copies_symbols_and_inner_drawings_are_scaled_as_shown(string body, double alongX, double alongY) => CheckSize(
        $"""
        <svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">
        <defs><rect id="shape" width="100" height="50"/><symbol id="symbol" viewBox="0 0 200 200"><rect width="100" height="50"/></symbol></defs>{body}</svg>
        """, alongX, alongY);

    [Theory]
    [InlineData("<rect id='front' width='100mm' height='1in' transform='scale(0.2645833333333)'/>", 100, 25.4)] // inner lengths are 96 units an inch
    [InlineData("<circle id='front' cx='50' cy='50' r='40'/>", 80, 80)]
    [InlineData("<ellipse id='front' cx='50' cy='50' rx='40' ry='10'/>", 80, 20)]
    [InlineData("<rect id='front' width='100' height='50' rx='10'/>", 100, 50)]
    [InlineData("<rect id='front' width='100' height='50' rx='auto' ry='500'/>", 100, 50)]
    [InlineData("<polygon id='front' points='0,0 100,0 100 50,0 50 7'/>", 100, 50)]
    [InlineData("<polyline id='front' points='0,0 100,0 100,50 0,50 0,0'/>", 100, 50)]
    [InlineData("<path id='front' d='M0 0h100v50H0z'/>", 100, 50)]
    public void Every_kind_of_shape_has_its_size(string shape, double alongX, double alongY) =>
        CheckSize($"""<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">{shape}</svg>""", alongX, alongY);

    // Area of a rectangle less its rounded corners: w·h - (4 - π)·rx·ry.
    [Fact]
    public void Rounded_rectangle_has_its_area()
    {
        Piece piece = Read("""<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300"><rect id="front" width="100" height="50" rx="20" ry="10"/></svg>""");
        Assert.Equal(5000 - (4 - Math.PI) * 200, piece.CuttingLine.AreaSquareMillimeters, 3.0);
    }

    [Fact]
    public void Y_points_up_so_that_the_piece_is_not_mirrored()
    {
        // The corner missing at the lower right of the drawing stays at the lower right.
        Piece piece = Read("""<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300"><path id="front" d="M 0 0 H 100 V 30 L 80 50 H 0 Z"/></svg>""");
        Assert.DoesNotContain(piece.CuttingLine.Outer, point => point == new Point(100_000, 0));
        Assert.Contains(piece.CuttingLine.Outer, point => point == new Point(100_000, 20_000));
    }

    private static Piece Read(string svg) => Jobs.Good(Jobs.ReadDrawing(svg)).Pieces[0].Piece;

    private static void CheckSize(string svg, double alongX, double alongY)
    {
        Box bounds = Read(svg).CuttingLine.Bounds;
        Assert.Equal(alongX, bounds.Width / 1000.0, 0.0021);
        Assert.Equal(alongY, bounds.Height / 1000.0, 0.0021);
    }
}
