using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.Guide;

/// <summary>Rulers along two edges of the lay, counted from the cut end and from the lower edge of the cloth, in the job's units.</summary>
internal static class LayRuler
{
    private const double TextSize = 2.2;
    private const double LeastSpace = 11;
    private static readonly Ink Line = new(0.15, LineStyle.Solid, 0.2);

    /// <summary>Draws both.</summary>
    /// <param name="page">Gets them.</param>
    /// <param name="frame">Where the lay lies.</param>
    /// <param name="area">The cloth.</param>
    /// <param name="system">Centimeters or inches.</param>
    public static void Draw(Drawing page, Frame frame, Area area, MeasureSystem system)
    {
        double unit = system == MeasureSystem.Metric ? 10 : 25.4;
        int step = StepFor(unit * frame.ScaleRatio);
        Spot origin = frame.Of(area.LeftMillimeters, area.BottomMillimeters).Moved(0, -4.2);
        page.Line(Role.Ruler, Line, origin, frame.Of(area.RightMillimeters, area.BottomMillimeters).Moved(0, -4.2));
        for (int mark = 0; mark * unit <= area.WidthMillimeters + 1e-6; mark += step)
        {
            Spot at = origin.Moved(mark * unit * frame.ScaleRatio, 0);
            page.Line(Role.Ruler, Line, at, at.Moved(0, -1.2));
            page.Text(Role.Ruler, Name(mark, system), at.Moved(0, -3.6), TextSize, Anchor.Middle);
        }
        Spot side = frame.Of(area.LeftMillimeters, area.BottomMillimeters).Moved(-1.5, 0);
        page.Line(Role.Ruler, Line, side, frame.Of(area.LeftMillimeters, area.TopMillimeters).Moved(-1.5, 0));
        for (int mark = 0; mark * unit <= area.HeightMillimeters + 1e-6; mark += step)
        {
            Spot at = side.Moved(0, mark * unit * frame.ScaleRatio);
            page.Line(Role.Ruler, Line, at, at.Moved(-1.2, 0));
            page.Text(Role.Ruler, Name(mark, system), at.Moved(-1.8, -0.8), TextSize, Anchor.End);
        }
    }

    private static string Name(int mark, MeasureSystem system) => mark == 0
        ? LengthWords.Tape(Length.Zero, system)
        : mark.ToString(CultureInfo.InvariantCulture);

    private static int StepFor(double unitOnPaper) =>
        ((int[])[5, 10, 20, 50, 100, 200, 500]).FirstOrDefault(step => step * unitOnPaper >= LeastSpace, 1000);
}
