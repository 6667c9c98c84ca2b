using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Input.Quantities;

namespace Nestmark.Tests.Input;

/// <summary>1 in = 25.4 mm, 1 ft = 304.8 mm, 1 yd = 914.4 mm exactly (international yard and pound agreement, 1959).</summary>
public sealed class LengthTextTests
{
    [Theory]
    [InlineData("1.5 cm", 15_000)]
    [InlineData("15mm", 15_000)]
    [InlineData("1.5", 15_000)]
    [InlineData(".5", 5_000)]
    [InlineData("5/8 in", 15_875)]
    [InlineData("2 1/4 yd", 2_057_400)]
    [InlineData("45\"", 1_143_000)]
    [InlineData("1 1/2\"", 38_100)]
    [InlineData("1 ½ in", 38_100)]
    [InlineData("1½ in", 38_100)]
    [InlineData("½ in", 12_700)]
    [InlineData("⅝ in", 15_875)]
    [InlineData("3 ft", 914_400)]
    [InlineData("2 m", 2_000_000)]
    [InlineData("1/3 in", 8_467)]
    [InlineData("1/8 yd", 114_300)] // references/trade.md 2.1: 11.43 cm
    [InlineData("  16   cm ", 160_000)]
    [InlineData("100 m", 100_000_000)]
    public void Lengths_are_read_as_sewists_write_them(string text, long micrometers)
    {
        Reading<Length> reading = LengthText.Read(text, LengthUnit.Centimeter, LengthRange.AboveZero);
        Assert.Null(reading.Fault);
        Assert.Equal(micrometers, reading.Value.Micrometers);
    }

    [Theory]
    [InlineData("1,5 cm", "Write \"1.5 cm\"")]
    [InlineData("1,500", "Write \"1.500\"")]
    [InlineData("nan", "plain number")]
    [InlineData(".inf", "plain number")]
    [InlineData("-Infinity", "plain number")]
    [InlineData("1e400", "plain digits")]
    [InlineData("1e3 mm", "plain digits")]
    [InlineData("99999999999999999999999999999999 m", "Check the number")]
    [InlineData("101 m", "Check the number")]
    [InlineData("79228162514264337593543950335 yd", "Check the number")]
    [InlineData("0", "length that is meant")]
    [InlineData("-2 cm", "length that is meant")]
    [InlineData("1/0 in", "above zero below the line")]
    [InlineData("1/ in", "above zero below the line")]
    [InlineData("3 furlong", "one of these units")]
    [InlineData("3 CM", "one of these units")]
    [InlineData("3'", "one of these units")]
    [InlineData("1 2 in", "Write a number as")]
    [InlineData("1-1/2 in", "one of these units")]
    [InlineData("cm", "Write a number as")]
    [InlineData("", "Write a number")]
    [InlineData("1.2.3", "Write a number as")]
    [InlineData("--1", "Write a number as")]
    public void What_is_no_length_gets_a_remedy(string text, string remedy)
    {
        Fault? fault = LengthText.Read(text, LengthUnit.Centimeter, LengthRange.AboveZero).Fault;
        Assert.NotNull(fault);
        Assert.Contains(remedy, fault.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Zero_is_fine_where_it_makes_sense() =>
        Assert.Equal(Length.Zero, LengthText.Read("0", LengthUnit.Inch, LengthRange.ZeroOrMore).Value);

    [Theory]
    [InlineData("16 x 18", 160, 180)]
    [InlineData("16cm x 18cm", 160, 180)]
    [InlineData("16 × 18", 160, 180)]
    [InlineData("6 x 7 1/2 in", 152.4, 190.5)]
    [InlineData("6 in x 180 mm", 152.4, 180)]
    public void Sizes_are_length_by_width(string text, double length, double width)
    {
        Reading<(Length Length, Length Width)> size = SizeText.Read(text, LengthUnit.Centimeter);
        Assert.Null(size.Fault);
        Assert.Equal((Length.FromMillimeters(length), Length.FromMillimeters(width)), size.Value);
    }

    [Theory]
    [InlineData("16")]
    [InlineData("16 x")]
    [InlineData("16 x 18 x 2")]
    [InlineData("16 x -18")]
    [InlineData("16 by 18")]
    public void What_is_no_size_is_a_fault(string text) => Assert.NotNull(SizeText.Read(text, LengthUnit.Centimeter).Fault);
}
