using System.Text.RegularExpressions;

namespace Nestmark.Tests.Conventions;

/// <summary>Property tests take the same samples in every run: one way of doing it, in Seeded.cs.</summary>
public sealed partial class PropertyTestsTests
{
    [Fact]
    public void Samples_are_drawn_in_one_place_only() => Assert.Equal(
        ["Seeded.cs"],
        Projects.TestFiles().Where(path => Drawing().IsMatch(File.ReadAllText(path))).Select(Path.GetFileName));

    // The rule sees both ways of drawing samples that CsCheck offers.
    [Theory]
    [InlineData("Gen.Int[0, 3].Sam" + "ple(n => n < 4);")]
    [InlineData("Gen.Int[0, 3].Gene" + "rate(new PCG(1, 1), null, out _);")]
    public void Drawing_samples_is_recognized(string code) => Assert.Matches(Drawing(), code);

    [Fact]
    public void A_failure_says_which_sample_it_was_and_how_to_make_it_again()
    {
        CsCheck.Gen<int> numbers = CsCheck.Gen.Int[0, 1_000];
        int seventh = numbers.Numbered(7);
        InvalidOperationException failure = Assert.Throws<InvalidOperationException>(() => numbers.Check(100, number => Assert.NotEqual(seventh, number)));
        Assert.StartsWith("Sample 7, which generator.Numbered(7) makes again", failure.Message, StringComparison.Ordinal);
        Assert.EndsWith("\n" + seventh.ToString(System.Globalization.CultureInfo.InvariantCulture), failure.Message, StringComparison.Ordinal);
    }

    /// <summary>A sample drawn by hand or by the package; a method of a test's own with that name stands without a dot before it.</summary>
    [GeneratedRegex(@"\.(Sample|Generate)\(", RegexOptions.CultureInvariant)]
    private static partial Regex Drawing();
}
