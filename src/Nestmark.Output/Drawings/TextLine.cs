using Nestmark.Output.Fonts;

namespace Nestmark.Output.Drawings;

/// <summary>One line of a block of text.</summary>
/// <param name="Text">As the user wrote it.</param>
/// <param name="SizeMillimeters">Font size.</param>
/// <param name="Weight">Weight.</param>
internal sealed record TextLine(string Text, double SizeMillimeters, FontWeight Weight = FontWeight.Regular)
{
    /// <summary>Its width when printed.</summary>
    public double WidthMillimeters => PrintFont.Of(Weight).WidthRatio(PrintFont.Of(Weight).Printable(Text)) * SizeMillimeters;
}
