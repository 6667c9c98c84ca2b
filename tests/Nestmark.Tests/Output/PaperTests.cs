using Nestmark.Output;

namespace Nestmark.Tests.Output;

public sealed class PaperTests
{
    // ISO 216 (A series) and ANSI/ASME Y14.1 (letter 8.5 x 11 in, tabloid 11 x 17 in): references/formats.md 6 [WIKI216, WIKIY14].
    // Legal, 8.5 x 14 in: common practice, no source.
    [Theory]
    [InlineData("a4", 210, 297)]
    [InlineData("A3", 297, 420)]
    [InlineData("a2", 420, 594)]
    [InlineData("a1", 594, 841)]
    [InlineData("a0", 841, 1189)]
    [InlineData("letter", 8.5 * 25.4, 11 * 25.4)]
    [InlineData("tabloid", 11 * 25.4, 17 * 25.4)]
    [InlineData("legal", 8.5 * 25.4, 14 * 25.4)]
    public void Sheets_have_their_standard_size(string name, double width, double height)
    {
        Paper paper = Paper.Read(name).Paper!;
        Assert.Equal(width, paper.Width.TotalMillimeters, 6);
        Assert.Equal(height, paper.Height!.Value.TotalMillimeters, 6);
    }

    // ISO 216: two sheets side by side make the next larger one; halves are rounded down to whole millimeters.
    [Theory]
    [InlineData("a4", "a3")]
    [InlineData("a3", "a2")]
    [InlineData("a2", "a1")]
    [InlineData("a1", "a0")]
    public void A_sheet_is_half_of_the_next_larger_one(string small, string large)
    {
        Assert.Equal(Paper.Read(large).Paper!.Width, Paper.Read(small).Paper!.Height);
        Assert.Equal(Math.Floor(Paper.Read(large).Paper!.Height!.Value.TotalMillimeters / 2), Paper.Read(small).Paper!.Width.TotalMillimeters);
    }

    [Theory]
    [InlineData("roll:914mm", 914)]
    [InlineData("roll:91.4cm", 914)]
    [InlineData("ROLL:36in", 914.4)]
    [InlineData("roll:42\"", 1066.8)]
    public void Rolls_have_a_width_and_no_length(string name, double width)
    {
        Paper paper = Paper.Read(name).Paper!;
        Assert.Equal(width, paper.Width.TotalMillimeters, 6);
        Assert.Null(paper.Height);
    }

    [Theory]
    [InlineData("a5")]
    [InlineData("")]
    [InlineData("roll:")]
    [InlineData("roll:914")]
    [InlineData("roll:1,5in")]
    [InlineData("roll:-914mm")]
    [InlineData("roll:1e9mm")]
    [InlineData("roll:NaNmm")]
    [InlineData("roll:10mm")]
    public void An_unknown_paper_is_answered_with_what_there_is(string name)
    {
        PaperReading reading = Paper.Read(name);
        Assert.Null(reading.Paper);
        Assert.Contains("a4, a3, a2, a1, a0, letter, legal, tabloid, roll:914mm", reading.Message, StringComparison.Ordinal);
    }
}
