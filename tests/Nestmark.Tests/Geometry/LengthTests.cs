using Nestmark.Geometry;

namespace Nestmark.Tests.Geometry;

public sealed class LengthTests
{
    // International yard and pound agreement, 1959: 1 in = 25.4 mm, 1 yd = 914.4 mm, exact by definition.
    [Fact]
    public void One_inch_is_25400_micrometers() => Assert.Equal(25_400, Length.FromInches(1).Micrometers);

    [Fact]
    public void One_yard_is_914400_micrometers() => Assert.Equal(914_400, Length.FromYards(1).Micrometers);

    // references/trade.md 2.1: 1/8 yd = 4 1/2 in = 11.43 cm.
    [Fact]
    public void An_eighth_of_a_yard_is_11_43_cm() => Assert.Equal(114_300, Length.FromYards(0.125).Micrometers);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e300)]
    public void FromMillimeters_rejects_what_is_no_length(double millimeters) =>
        Assert.Throws<ArgumentException>(() => Length.FromMillimeters(millimeters));

    // references/trade.md 2.1: need 3.2 m, sold in half meters: 3.5 m; in steps of 10 cm: 3.2 m.
    [Theory]
    [InlineData(3.2, 0.5, 3.5)]
    [InlineData(3.2, 0.1, 3.2)]
    [InlineData(3.2001, 0.1, 3.3)]
    public void RoundedUpTo_never_rounds_down(double needMeters, double stepMeters, double expectedMeters) =>
        Assert.Equal(Length.FromMeters(expectedMeters), Length.FromMeters(needMeters).RoundedUpTo(Length.FromMeters(stepMeters)));
}
