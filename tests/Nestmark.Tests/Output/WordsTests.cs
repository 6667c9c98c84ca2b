using CsCheck;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Words;
using Nestmark.Yardage;
using PdfSharp.Drawing;

namespace Nestmark.Tests.Output;

public sealed class WordsTests
{
    // 1 in = 25.4 mm; a tape shows sixteenths, fractions in lowest terms.
    [Theory]
    [InlineData(25.4, "1")]
    [InlineData(12.7, "1/2")]
    [InlineData(1400, "55 1/8")]
    [InlineData(15.875, "5/8")]
    [InlineData(0, "0")]
    [InlineData(0.7, "0")]
    [InlineData(-38.1, "-1 1/2")]
    [InlineData(25.3, "1")]
    public void Inches_are_given_to_the_nearest_sixteenth(double millimeters, string expected) =>
        Assert.Equal(expected, TapeText.Number(Length.FromMillimeters(millimeters), MeasureSystem.Imperial));

    [Theory]
    [InlineData(1234.5, "123.5")]
    [InlineData(1234.4, "123.4")]
    [InlineData(20, "2.0")]
    [InlineData(0.2, "0.0")]
    public void Centimeters_are_given_to_the_millimeter(double millimeters, string expected) =>
        Assert.Equal(expected, TapeText.Number(Length.FromMillimeters(millimeters), MeasureSystem.Metric));

    // Judge: the PDF library's own measuring of the same font.
    [Theory]
    [InlineData("Harbour smock, café ½ ⅝", "regular")]
    [InlineData("WRONG SIDE UP – 1 7/8 yd", "bold")]
    public void Widths_are_those_of_the_font(string text, string weight)
    {
        bool bold = weight == "bold";
        PrintFontResolver.Install();
        using XGraphics graphics = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
        XFont font = new(PrintFont.Family, 100, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
        Assert.Equal(graphics.MeasureString(text, font).Width, PrintFont.Of(bold ? FontWeight.Bold : FontWeight.Regular).WidthRatio(text) * 100, 0.1);
    }

    [Fact]
    public void The_font_has_the_letters_that_the_program_prints()
    {
        const string Letters = "abcxyzABCXYZ0123456789 éñçüßøÅ ½¼¾⅛⅜⅝⅞ ·–…“”’×°% □";
        Assert.True(PrintFont.Regular.Covers(Letters) && PrintFont.Bold.Covers(Letters));
    }

    [Fact]
    public void Line_breaks_controls_and_halves_of_letters_vanish() =>
        Assert.Equal("a b c", CleanText.OneLine("a\nb \u0000\u202e\ud800c\t"));

    // Wrapping keeps every letter and never exceeds the width unless a single letter does.
    [Fact]
    public void Wrapped_lines_fit_and_lose_nothing() =>
        Gen.String[Gen.Char["abcé ½W"], 0, 60].Select(Gen.Double[2, 40]).Check(300,
            (text, width) =>
            {
                IReadOnlyList<string> lines = TextColumn.Wrapped(text, 3, FontWeight.Regular, width);
                Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
                Assert.All(lines, line => Assert.True(line.Length == 1 || new TextLine(line, 3).WidthMillimeters <= width));
            });

    [Fact]
    public void Cut_text_ends_in_dots_and_fits()
    {
        string cut = FittedText.Cut("a rather long name of a piece", 3, FontWeight.Regular, 20);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.True(new TextLine(cut, 3).WidthMillimeters <= 20);
    }
}
