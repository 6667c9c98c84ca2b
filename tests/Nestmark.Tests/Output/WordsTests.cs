using CsCheck;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using PdfSharp.Drawing;

namespace Nestmark.Tests.Output;

public sealed class WordsTests
{
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
