using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Output.Drawings;

/// <summary>Lines of text below each other, centered.</summary>
/// <param name="Lines">From the top.</param>
internal sealed record TextBlock(ImmutableArray<TextLine> Lines)
{
    private const double LeadingRatio = 1.25;

    /// <summary>Width of the widest line.</summary>
    public double WidthMillimeters { get; } = Lines.Max(line => line.WidthMillimeters);

    /// <summary>Height of all lines.</summary>
    public double HeightMillimeters { get; } = Lines.Sum(line => line.SizeMillimeters * LeadingRatio);

    /// <summary>This block, scaled.</summary>
    public TextBlock Scaled(double ratio) => new([.. Lines.Select(line => line with { SizeMillimeters = line.SizeMillimeters * ratio })]);

    /// <summary>Draws it around a center.</summary>
    /// <param name="drawing">Gets the lines.</param>
    /// <param name="center">Middle of the block.</param>
    /// <param name="turn">Zero or a quarter turn.</param>
    public void Draw(Drawing drawing, Spot center, Angle turn)
    {
        double down = HeightMillimeters / 2;
        foreach (TextLine line in Lines)
        {
            double baseLine = down - line.SizeMillimeters * LeadingRatio * 0.78;
            Spot at = center.Moved(-turn.SineRatio * baseLine, turn.CosineRatio * baseLine);
            drawing.Add(new TextFigure(Role.Label, line.Text, at, line.SizeMillimeters, Anchor.Middle, line.Weight, turn, 0));
            down -= line.SizeMillimeters * LeadingRatio;
        }
    }
}
