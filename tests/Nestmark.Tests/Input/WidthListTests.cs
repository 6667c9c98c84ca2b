using Nestmark.Input;

namespace Nestmark.Tests.Input;

public sealed class WidthListTests
{
    [Theory]
    [InlineData("90cm,115cm", "900 1150")]
    [InlineData("36in, 45 in", "914.4 1143")]
    [InlineData("90,115,140cm", "900 1150 1400")]
    [InlineData("22 1/2in,1.4 m", "571.5 1400")]
    [InlineData("140cm,140cm", "1400")]
    public void Widths_are_read_in_their_order(string text, string millimeters) => Assert.Equal(
        millimeters, string.Join(' ', WidthList.Read(text).Widths.Select(width => FormattableString.Invariant($"{width.TotalMillimeters}"))));

    [Theory]
    [InlineData("")]
    [InlineData("140")]
    [InlineData("wide")]
    [InlineData("140cm,")]
    [InlineData("-140cm")]
    [InlineData("0cm")]
    [InlineData("6m")]
    [InlineData("140 furlongs")]
    [InlineData("10cm,11cm,12cm,13cm,14cm,15cm,16cm,17cm,18cm,19cm,20cm,21cm,22cm")]
    public void Anything_else_is_refused_with_an_example(string text)
    {
        WidthsReading reading = WidthList.Read(text);
        Assert.Empty(reading.Widths);
        Assert.NotEqual("", reading.Message);
    }

    [Fact]
    public void The_digest_of_a_job_changes_with_the_job_and_with_its_drawings()
    {
        const string Drawing = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='300mm' viewBox='0 0 400 300'><path id='front' d='M0 0 H100 V50 H0 Z'/></svg>";
        string plain = Jobs.ReadDrawing(Drawing).Digest;
        Assert.Equal(32, plain.Length);
        Assert.Equal(plain, Jobs.ReadDrawing(Drawing).Digest);
        Assert.NotEqual(plain, Jobs.ReadDrawing(Drawing.Replace("H100", "H101", StringComparison.Ordinal)).Digest);
        Assert.NotEqual(plain, Jobs.ReadDrawing(Drawing, cut: "2 pairs").Digest);
    }
}
