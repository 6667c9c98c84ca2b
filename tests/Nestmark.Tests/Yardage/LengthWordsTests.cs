using CsCheck;
using Nestmark.Geometry;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

public sealed class LengthWordsTests
{
    [Theory]
    [InlineData(12.375, "12 3/8\"")]
    [InlineData(0.5, "1/2\"")]
    [InlineData(3, "3\"")]
    [InlineData(0, "0\"")]
    [InlineData(2.99, "3\"")]
    [InlineData(2.0625, "2 1/8\"")]
    public void Inches_are_in_eighths_and_lowest_terms(double inches, string expected) =>
        Assert.Equal(expected, LengthWords.Tape(Length.FromInches(inches), MeasureSystem.Imperial));

    [Fact]
    public void Finer_parts_are_had_for_the_asking() => Assert.Equal("1 5/16\"", LengthWords.Inches(Length.FromInches(1.3125), 16));

    [Fact]
    public void Inches_below_zero_keep_their_sign() => Assert.Equal("-1 1/4\"", LengthWords.Inches(Length.FromInches(-1.25), 8));

    [Theory]
    [InlineData(314.4, "31.4 cm")]
    [InlineData(314.5, "31.5 cm")]
    [InlineData(20, "2 cm")]
    public void Centimeters_are_to_the_millimeter(double millimeters, string expected) =>
        Assert.Equal(expected, LengthWords.Tape(Length.FromMillimeters(millimeters), MeasureSystem.Metric));

    // references/trade.md 2.1 [HOS]: 1/8 yd = 4 1/2 in, 1/3 = 12 in, 3/8 = 13 1/2 in, 7/8 = 31 1/2 in.
    [Theory]
    [InlineData(4.5, "1/8 yd")]
    [InlineData(12, "1/3 yd")]
    [InlineData(13.5, "3/8 yd")]
    [InlineData(31.5, "7/8 yd")]
    [InlineData(36, "1 yd")]
    [InlineData(67.5, "1 7/8 yd")]
    [InlineData(7.3, "7 3/8\"")]
    public void Yards_to_buy_read_as_at_the_counter(double inches, string expected) =>
        Assert.Equal(expected, LengthWords.ToBuy(Length.FromInches(inches), MeasureSystem.Imperial));

    [Theory]
    [InlineData(1700, "1.7 m")]
    [InlineData(850, "85 cm")]
    [InlineData(1000, "1 m")]
    [InlineData(1750, "1.75 m")]
    [InlineData(114.3, "11.5 cm")]
    [InlineData(1714.5, "1.715 m")]
    public void Meters_to_buy_are_never_less_than_the_length(double millimeters, string expected) =>
        Assert.Equal(expected, LengthWords.ToBuy(Length.FromMillimeters(millimeters), MeasureSystem.Metric));

    [Fact]
    public void Reasons_round_what_is_needed_up_and_what_is_there_down() =>
        Gen.Select(Gen.Long[0, 3_000_000], Gen.Bool).Check(1000, (micrometers, metric) =>
        {
            MeasureSystem system = metric ? MeasureSystem.Metric : MeasureSystem.Imperial;
            Length length = Length.FromMicrometers(micrometers);
            string atLeast = LengthWords.WordingOf(system).AtLeast(length);
            string atMost = LengthWords.WordingOf(system).AtMost(length);
            bool whole = micrometers % (metric ? 1_000 : 3_175) == 0;
            Assert.Equal(whole, atLeast == atMost);
        });
}
