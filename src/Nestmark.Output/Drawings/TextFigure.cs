using Nestmark.Geometry;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Drawings;

/// <summary>One line of text.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Text">As the user wrote it.</param>
/// <param name="At">Where the anchor of its base line lies.</param>
/// <param name="SizeMillimeters">Font size.</param>
/// <param name="Anchor">Which point of the base line that is.</param>
/// <param name="Weight">Weight.</param>
/// <param name="Turn">Counter-clockwise about <paramref name="At"/>.</param>
/// <param name="GrayRatio">0 black to 1 white.</param>
internal sealed record TextFigure(
    Role Role, string Text, Spot At, double SizeMillimeters, Anchor Anchor, FontWeight Weight, Angle Turn, double GrayRatio) : Figure
{
    /// <summary>Its width when printed.</summary>
    public double WidthMillimeters =>
        PrintFont.Of(Weight).WidthRatio(PrintFont.Of(Weight).Printable(Text)) * SizeMillimeters;

    /// <summary>What its letters cover, upright or at a right angle; less exact at other turns.</summary>
    public Area Covered
    {
        get
        {
            double start = Anchor switch { Anchor.Start => 0, Anchor.Middle => -WidthMillimeters / 2, _ => -WidthMillimeters };
            (double sine, double cosine) = (Turn.SineRatio, Turn.CosineRatio);
            Area straight = new(start, -0.25 * SizeMillimeters, start + WidthMillimeters, 0.8 * SizeMillimeters);
            return Area.Around(straight.Corners.Select(corner => At.Moved(
                corner.XMillimeters * cosine - corner.YMillimeters * sine, corner.XMillimeters * sine + corner.YMillimeters * cosine)));
        }
    }

    /// <inheritdoc/>
    public override Area Bounds
    {
        get
        {
            double reach = WidthMillimeters + SizeMillimeters;
            return new Area(At.XMillimeters, At.YMillimeters, At.XMillimeters, At.YMillimeters).Grown(reach);
        }
    }
}
