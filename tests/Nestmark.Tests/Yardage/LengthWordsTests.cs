using CsCheck;
using Nestmark.Geometry;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

public sealed class LengthWordsTests
{
    // 1 in = 25.4 mm exactly; a tape shows sixteenths, fractions in lowest terms.
    [Theory]
    [InlineData(314.325, "12 3/8")]
    [InlineData(25.4, "1")]
    [InlineData(12.7, "1/2")]
    [InlineData(1400, "55 1/8")]
    [InlineData(33.3375, "1 5/16")]
    [InlineData(0, "0")]
    [InlineData(0.7, "0")]
    [InlineData(-38.1, "-1 1/2")]
    [InlineData(25.3, "1")]
    public void Inches_on_a_tape_are_given_to_the_nearest_sixteenth(double millimeters, string expected)
    {
        Length length = Length.FromMillimeters(millimeters);
        Assert.Equal(expected, LengthWords.TapeNumber(length, MeasureSystem.Imperial));
        Assert.Equal(expected + "\"", LengthWords.Tape(length, MeasureSystem.Imperial));
    }

    [Theory]
    [InlineData(1234.5, "123.5")]
    [InlineData(1234.4, "123.4")]
    [InlineData(20, "2.0")]
    [InlineData(0.2, "0.0")]
    public void Centimeters_in_a_column_keep_their_decimal(double millimeters, string expected) =>
        Assert.Equal(expected, LengthWords.TapeNumber(Length.FromMillimeters(millimeters), MeasureSystem.Metric));

    [Fact]
    public void Both_systems_stand_side_by_side_the_own_first()
    {
        Assert.Equal("140 cm (55 1/8\")", LengthWords.TapeInBoth(Length.FromCentimeters(140), MeasureSystem.Metric));
        Assert.Equal("45\" (114.3 cm)", LengthWords.TapeInBoth(Length.FromInches(45), MeasureSystem.Imperial));
    }

    // references/trade.md 2.1 [HOS]: 1/8 yd = 4 1/2 in. A step is told in the units in which it is whole.
    [Theory]
    [InlineData(114.3, MeasureSystem.Imperial, "1/8 yd")]
    [InlineData(914.4, MeasureSystem.Imperial, "1 yd")]
    [InlineData(304.8, MeasureSystem.Imperial, "1/3 yd")]
    [InlineData(25.4, MeasureSystem.Imperial, "1\"")]
    [InlineData(100, MeasureSystem.Metric, "10 cm")]
    [InlineData(100, MeasureSystem.Imperial, "10 cm")]
    [InlineData(114.3, MeasureSystem.Metric, "1/8 yd")]
    public void A_step_reads_as_the_shop_says_it(double millimeters, MeasureSystem system, string expected) =>
        Assert.Equal(expected, LengthWords.Step(Length.FromMillimeters(millimeters), system));

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
