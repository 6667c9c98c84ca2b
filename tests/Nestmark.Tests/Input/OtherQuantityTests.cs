using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Input.Quantities;

namespace Nestmark.Tests.Input;

public sealed class OtherQuantityTests
{
    [Theory]
    [InlineData("18.50 per m", 18.50, 1000, "")]
    [InlineData("12 per yd", 12, 914.4, "")]
    [InlineData("€18.50 per m", 18.50, 1000, "€")]
    [InlineData("18.50 EUR per m", 18.50, 1000, "EUR")]
    [InlineData("$ 9 per 50 cm", 9, 500, "$")]
    [InlineData("0 per m", 0, 1000, "")]
    public void Prices_name_a_length(string text, double amount, double perMillimeters, string currency)
    {
        Nestmark.Cloths.ClothPrice price = PriceText.Read(text).Value!;
        Assert.Equal(((decimal)amount, Length.FromMillimeters(perMillimeters), currency), (price.Amount, price.Per, price.Currency));
    }

    [Theory]
    [InlineData("18.50")]
    [InlineData("18,50 per m")]
    [InlineData("-3 per m")]
    [InlineData("3 per 0 m")]
    [InlineData("3 per piece")]
    [InlineData("per m")]
    [InlineData("€3€ per m")]
    [InlineData("3 per 2")]
    public void What_is_no_price_is_a_fault(string text) => Assert.NotNull(PriceText.Read(text).Fault);

    [Theory]
    [InlineData("5 %", 0.05)]
    [InlineData("2.5%", 0.025)]
    [InlineData("0 %", 0)]
    public void Percentages_become_parts_of_one(string text, double ratio) => Assert.Equal(ratio, RatioText.Percent(text).Value, 12);

    [Theory]
    [InlineData("5")]
    [InlineData("-1 %")]
    [InlineData("51 %")]
    [InlineData("100 %")]
    [InlineData("1,5 %")]
    public void What_is_no_percentage_is_a_fault(string text) => Assert.NotNull(RatioText.Percent(text).Fault);

    [Theory]
    [InlineData("2 deg")]
    [InlineData("2°")]
    public void Angles_are_in_degrees(string text) => Assert.Equal(Angle.FromDegrees(2), RatioText.Degrees(text).Value);

    [Theory]
    [InlineData("2")]
    [InlineData("46 deg")]
    [InlineData("2 rad")]
    public void What_is_no_angle_is_a_fault(string text) => Assert.NotNull(RatioText.Degrees(text).Fault);

    // The words: references/trade.md 4.2.
    [Theory]
    [InlineData("2", "2")]
    [InlineData("1 pair", "1 pair")]
    [InlineData("2  pairs", "2 pairs")]
    [InlineData("1 on fold", "1 on fold")]
    [InlineData("2 on the fold", "2 on fold")]
    public void Cut_instructions_are_read_in_the_words_of_the_trade(string text, string expected) =>
        Assert.Equal(expected, CutText.Read(text).Value.ToString());

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData("two")]
    [InlineData("pair")]
    [InlineData("1 pear")]
    [InlineData("99999999999")]
    [InlineData("")]
    public void What_is_no_cut_instruction_is_a_fault(string text) => Assert.NotNull(CutText.Read(text).Fault);

    [Theory]
    [InlineData("seem", "seam")]
    [InlineData("Width", "width")]
    [InlineData("widht", "width")]
    [InlineData("price", null)]
    public void Nearest_word_is_suggested_when_it_is_near(string word, string? expected) =>
        Assert.Equal(expected, Spelling.Nearest(word, ["seam", "width", "outline"]));
}
