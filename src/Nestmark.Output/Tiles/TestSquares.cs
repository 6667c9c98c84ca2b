using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Tiles;

/// <summary>Shapes of known size, to be measured on paper before anything is cut.</summary>
internal static class TestSquares
{
    /// <summary>Side of the metric square.</summary>
    public const double MetricSide = 50;

    /// <summary>Side of the imperial square: 2 in.</summary>
    public const double ImperialSide = 50.8;

    private static readonly Ink Line = new(0.25);

    /// <summary>Both squares side by side.</summary>
    /// <param name="drawing">Gets them.</param>
    /// <param name="topLeft">Upper left corner of the first.</param>
    /// <returns>Upper right corner of the second.</returns>
    public static Spot Draw(Drawing drawing, Spot topLeft)
    {
        DrawSquare(drawing, topLeft, MetricSide, "5 cm");
        Spot second = topLeft.Moved(MetricSide + 8, 0);
        DrawSquare(drawing, second, ImperialSide, "2\"");
        return second.Moved(ImperialSide, 0);
    }

    /// <summary>What a bar covers.</summary>
    public static Area BarArea(Spot left) =>
        new Area(0, -1.8, ImperialSide + 4, 2.6).Moved(left.XMillimeters, left.YMillimeters);

    /// <summary>A short bar for a page: 5 cm, and a tick where 2 inches end.</summary>
    public static void DrawBar(Drawing drawing, Spot left)
    {
        Ink ink = new(0.2, LineStyle.Solid, 0.3);
        drawing.Line(Role.TestSquare, ink, left.Moved(0, 1.5), left, left.Moved(MetricSide, 0), left.Moved(MetricSide, 1.5));
        drawing.Line(Role.TestSquare, ink, left.Moved(MetricSide, 0), left.Moved(ImperialSide, 0), left.Moved(ImperialSide, -1.5));
        drawing.Text(Role.TestSquare, "5 cm", left.Moved(MetricSide - 1, 0.7), 2.2, Anchor.End);
        drawing.Text(Role.TestSquare, "2\"", left.Moved(ImperialSide + 0.8, -1.6), 2.2);
    }

    private static void DrawSquare(Drawing drawing, Spot topLeft, double side, string name)
    {
        drawing.Ring(
            Role.TestSquare, Line, topLeft.Moved(0, -side), topLeft.Moved(side, -side), topLeft.Moved(side, 0), topLeft);
        Spot middle = topLeft.Moved(side / 2, -side / 2);
        drawing.Text(Role.TestSquare, name, middle.Moved(0, 1), 7, Anchor.Middle, FontWeight.Bold);
        drawing.Text(Role.TestSquare, "each side, measured", middle.Moved(0, -5), 2.8, Anchor.Middle);
        drawing.Text(Role.TestSquare, "along the line", middle.Moved(0, -9), 2.8, Anchor.Middle);
    }
}
